package campcloth.pages.plan;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.ClothsBesides;
import campcloth.advice.FireSideBySide;
import campcloth.advice.Judged;
import campcloth.advice.Question;
import campcloth.advice.Ranking;
import campcloth.advice.Verdict;
import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.SideBySide;
import campcloth.fibre.Fibres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** Some cloths side by side for the same garment at the same event: fire first, then verdict, criteria and figures. */
@Controller
class ComparePage {

    private final Planned planned;
    private final Adviser adviser;
    private final AtFire atFire;
    private final Fibres fibres;

    ComparePage(Planned planned, Adviser adviser, AtFire atFire, Fibres fibres) {
        this.planned = planned;
        this.adviser = adviser;
        this.atFire = atFire;
        this.fibres = fibres;
    }

    @GetMapping("/plan/compare")
    String compare(
            @ModelAttribute("form") AskedForm form, @RequestParam(defaultValue = "") List<String> cloth, Model model) {
        List<Candidate> ticked = planned.ticked(cloth);
        Planned.Question about = planned.question(form, () -> ticked);
        Question question = about.asked().question();
        Ranking ranking = adviser.rank(question);
        List<Candidate> ranked =
                ranking.judged().stream().map(Judged::candidate).toList();
        ClothsBesides besides = new ClothsBesides(
                SideBySide.of(ranked.stream().map(Candidate::cloth).toList()), Optional.empty());
        model.addAttribute("query", form.query());
        model.addAttribute("event", EventLine.of(about.event(), fibres));
        model.addAttribute("garment", form.chosenDesign().name());
        model.addAttribute("worn", WornLine.of(adviser, question));
        model.addAttribute("heeding", Heeding.of(ranking.cautions()));
        model.addAttribute("presumed", about.asked().presumed(ranking));
        model.addAttribute("compared", compared(question, ranking, besides));
        model.addAttribute(
                "figures",
                besides.compared().figures().stream().map(FigureRow::of).toList());
        model.addAttribute("notes", ClothsBesides.NOTES);
        return "plan/compare";
    }

    private List<ComparedCloth> compared(Question question, Ranking ranking, ClothsBesides besides) {
        List<ComparedCloth> all = new ArrayList<>();
        for (int i = 0; i < ranking.judged().size(); i++) {
            Judged judged = ranking.judged().get(i);
            Cloth cloth = judged.candidate().cloth();
            all.add(ComparedCloth.of(
                    ClothCard.of(i + 1, judged, ranking),
                    FireSideBySide.meltablePercent(Estimates.complete(cloth)),
                    judged.verdict() == Verdict.RULED_OUT ? List.of() : besides.bestAt(i),
                    atFire.of(question, cloth),
                    question.event().rules(),
                    adviser.course(question, cloth)));
        }
        return all;
    }
}
