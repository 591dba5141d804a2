package campcloth.pages.plan;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Ranking;
import campcloth.advice.RankingDrawing;
import campcloth.advice.Robustness;
import campcloth.advice.Shortlist;
import campcloth.cloth.ClothSearch;
import campcloth.fibre.Fibres;
import campcloth.job.RankingGate;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** What is asked about a ranking on demand: how firm its order is, and what would better a verdict. */
@Controller
class FirmnessPage {

    private final RankingGate gate;
    private final Planned planned;
    private final Adviser adviser;
    private final Shortlist shortlist;
    private final Fibres fibres;

    FirmnessPage(RankingGate gate, Planned planned, Adviser adviser, Shortlist shortlist, Fibres fibres) {
        this.gate = gate;
        this.planned = planned;
        this.adviser = adviser;
        this.shortlist = shortlist;
        this.fibres = fibres;
    }

    private record Firmness(Ranking ranking, Robustness robustness) {}

    @GetMapping("/plan/firmness")
    String firmness(@ModelAttribute("form") AskedForm form, @ModelAttribute("filter") ClothFilter filter, Model model) {
        ClothSearch search = filter.search(fibres);
        Planned.Question about = planned.question(form, List::of);
        Firmness firmness = gate.through(() -> {
            Shortlist.Ranked ranked = shortlist.rank(about.asked().question(), search, Shortlist.USUAL);
            return new Firmness(ranked.ranking(), adviser.robustness(ranked.question(), ranked.ranking()));
        });
        model.addAttribute("query", form.query() + filter.query());
        model.addAttribute("event", EventLine.of(about.event(), fibres));
        model.addAttribute("worn", WornLine.of(adviser, about.asked().question()));
        // Within the page, not at an address of its own: its figures take as long as the page's, and are the same.
        model.addAttribute("picture", RankingDrawing.svg(firmness.ranking(), firmness.robustness()));
        model.addAttribute("text", RankingDrawing.text(firmness.ranking(), firmness.robustness()));
        model.addAttribute("robustness", firmness.robustness());
        return "plan/firmness";
    }

    @GetMapping("/plan/better")
    String better(@ModelAttribute("form") AskedForm form, @RequestParam String cloth, Model model) {
        Candidate candidate = planned.cloth(cloth);
        Planned.Question about = planned.question(form, () -> List.of(candidate));
        model.addAttribute("query", form.query());
        model.addAttribute("event", EventLine.of(about.event(), fibres));
        model.addAttribute("worn", WornLine.of(adviser, about.asked().question()));
        model.addAttribute("cloth", candidate);
        model.addAttribute(
                "answer",
                adviser.whatIfs(about.asked().question(), List.of(candidate)).get(candidate.id()));
        return "plan/better";
    }
}
