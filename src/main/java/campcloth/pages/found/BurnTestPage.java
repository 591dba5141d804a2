package campcloth.pages.found;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.ToldMake;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameFeature;
import campcloth.fibre.FlameFinding;
import campcloth.fibre.FlameKey;
import campcloth.fibre.FlameSafety;
import campcloth.figure.Source;
import campcloth.figure.Sources;
import campcloth.pages.OnceOnly;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Which fibre single threads are likely of. Nothing is kept: the address carries what was seen. */
@Controller
class BurnTestPage {

    private static final ToldMake NOTHING_TOLD =
            new ToldMake(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    private final FlameKey key;
    private final Sources sources;
    private final Fibres fibres;
    private final Cloths cloths;
    private final OnceOnly once;

    BurnTestPage(FlameKey key, Sources sources, Fibres fibres, Cloths cloths, OnceOnly once) {
        this.key = key;
        this.sources = sources;
        this.fibres = fibres;
        this.cloths = cloths;
        this.once = once;
    }

    /** A question with its answers. */
    record Question(FlameFeature feature, List<FlameAnswer> answers) {}

    @GetMapping("/burn-test")
    String burnTest(@RequestParam Map<String, String> asked, Model model) {
        BurnAnswers answers = new BurnAnswers(asked);
        if (answers.isWordy()) {
            return "redirect:" + answers.address();
        }
        model.addAttribute("answers", answers);
        model.addAttribute("safety", FlameSafety.SAFETY);
        model.addAttribute("instructions", FlameSafety.INSTRUCTIONS);
        model.addAttribute("cautions", FlameKey.CAUTIONS);
        model.addAttribute("questions", questions());
        model.addAttribute("threads", BurnAnswers.THREADS);
        model.addAttribute("sources", cited());
        if (answers.isSent() && !answers.isAnswered()) {
            model.addAttribute("unanswered", true);
        }
        if (answers.isAnswered()) {
            FlameFinding finding = key.finding(answers.threads());
            model.addAttribute("finding", finding);
            model.addAttribute("warnings", FlameKey.warnings(finding));
            model.addAttribute(
                    "found", finding.threads().stream().map(BurntThread::new).toList());
        }
        return "found/burn-test";
    }

    /** Keeps a cloth of unknown fibre, with what was seen in its note: a burn test tells no shares. */
    @PostMapping("/burn-test/cloth")
    String keep(@RequestParam(required = false) @Nullable String name, @RequestParam Map<String, String> asked) {
        BurnAnswers answers = new BurnAnswers(asked);
        FlameFinding finding = key.finding(answers.threads());
        Cloth cloth = NOTHING_TOLD.cloth(
                name == null ? "" : name,
                Blend.pure(fibres.require(Fibre.UNKNOWN)),
                Map.of(),
                "Burn test. " + answers.words() + ". " + finding.sentence() + " " + melting(finding));
        return "redirect:" + once.made(() -> "/cloths/" + cloths.add(cloth).id());
    }

    private static String melting(FlameFinding finding) {
        return finding.melting() == FlameFinding.Melting.SHOWN
                ? "It was seen to melt."
                : "It was not seen to melt, which does not show that it does not.";
    }

    private List<Question> questions() {
        return Arrays.stream(FlameFeature.values())
                .map(feature -> new Question(feature, key.answers(feature)))
                .toList();
    }

    private List<Source> cited() {
        return FlameKey.SOURCES.stream()
                .map(sources::named)
                .flatMap(Optional::stream)
                .toList();
    }
}
