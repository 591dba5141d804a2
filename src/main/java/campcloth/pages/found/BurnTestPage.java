package campcloth.pages.found;

import campcloth.fibre.FlameFeature;
import campcloth.fibre.FlameFinding;
import campcloth.fibre.FlameKey;
import campcloth.fibre.FlameSafety;
import campcloth.figure.Source;
import campcloth.figure.Sources;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Which fibre single threads are likely of. Nothing is kept: the address carries what was seen. */
@Controller
class BurnTestPage {

    private final FlameKey key;
    private final Sources sources;

    BurnTestPage(FlameKey key, Sources sources) {
        this.key = key;
        this.sources = sources;
    }

    /** A question with its answers. */
    record Question(FlameFeature feature, List<campcloth.fibre.FlameAnswer> answers) {}

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
        if (answers.isSent()) {
            FlameFinding finding = key.finding(answers.threads());
            model.addAttribute("finding", finding);
            model.addAttribute("warnings", FlameKey.warnings(finding));
            model.addAttribute("found", finding.threads().stream().map(BurntThread::new).toList());
        }
        return "found/burn-test";
    }

    private List<Question> questions() {
        return Arrays.stream(FlameFeature.values())
                .map(feature -> new Question(feature, key.answers(feature)))
                .toList();
    }

    private List<Source> cited() {
        return FlameKey.SOURCES.stream().map(sources::named).flatMap(Optional::stream).toList();
    }
}
