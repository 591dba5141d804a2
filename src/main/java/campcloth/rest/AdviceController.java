package campcloth.rest;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Question;
import campcloth.advice.Ranking;
import campcloth.advice.Shortlist;
import campcloth.fibre.Fibres;
import campcloth.job.RankingGate;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The advice: cloths ranked for an event and a garment. */
@RestController
@Tag(name = "Advice", description = "Which cloth? Ranked with reasons, melt warnings and rules")
class AdviceController {

    private final RankingGate gate;
    private final Adviser adviser;
    private final Shortlist shortlist;
    private final Candidates candidates;
    private final Questions questions;
    private final Fibres fibres;

    AdviceController(
            RankingGate gate,
            Adviser adviser,
            Shortlist shortlist,
            Candidates candidates,
            Questions questions,
            Fibres fibres) {
        this.gate = gate;
        this.adviser = adviser;
        this.shortlist = shortlist;
        this.candidates = candidates;
        this.questions = questions;
        this.fibres = fibres;
    }

    @PostMapping("/api/advice")
    @Operation(
            operationId = "rankCloths",
            summary = "Ranks cloths for a garment at an event",
            description =
                    "The verdict comes before the score: rules and fire gate, and the score only orders what passed. Of more than"
                            + " 2000 cloths only the best are judged in full and ranked: at least 100, as many as asked for."
                            + " They are the same, in the same order, as though all were. As many rankings are worked out at a"
                            + " time as there are processors; others wait a few seconds, then they are answered 503 with"
                            + " Retry-After and the problem urn:campcloth:problem:busy.")
    AdviceAnswer advise(@Valid @RequestBody AdviceRequest request) {
        Questions.Told told = questions.of(
                request.event(), request.eventId(), request.garment(), () -> candidates.named(request.cloths()));
        return gate.through(() -> advised(told, request));
    }

    private AdviceAnswer advised(Questions.Told told, AdviceRequest request) {
        Shortlist.Ranked ranked = ranked(told.asked().question(), request);
        Question question = ranked.question();
        Ranking ranking = ranked.ranking();
        List<Candidate> page = ranking.judged().stream()
                .limit(request.answers())
                .map(Judged::candidate)
                .toList();
        return AdviceAnswer.of(
                ranked,
                told.asked().presumed(ranking),
                request.answers(),
                RulesBody.ConflictBody.of(question.event().rules(), fibres),
                told.eventVersion(),
                WornOutfitBody.of(question.outfit(), adviser.wornBesides(question)),
                adviser.whatIfs(question, page),
                page.isEmpty() ? Map.of() : adviser.courses(question, page),
                adviser.robustness(question, ranking));
    }

    private Shortlist.Ranked ranked(Question about, AdviceRequest request) {
        return candidates
                .searched(request.cloths())
                .map(search -> shortlist.rank(about, search, request.answers()))
                .orElseGet(() -> shortlist.whole(about));
    }
}
