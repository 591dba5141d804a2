package campcloth.pages.plan;

import campcloth.advice.Adviser;
import campcloth.advice.Judged;
import campcloth.advice.LayerPair;
import campcloth.advice.Layers;
import campcloth.advice.Ranking;
import campcloth.advice.Shortlist;
import campcloth.advice.Verdict;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.WeightClass;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.job.RankingGate;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The cloths ranked for an event and a garment. */
@Controller
class RankingPage {

    /** How many are named at once, before what is to heed. */
    private static final int FIRST = 3;

    private final RankingGate gate;
    private final Planned planned;
    private final Adviser adviser;
    private final GarmentChoices choices;
    private final Shortlist shortlist;
    private final Fibres fibres;

    RankingPage(
            RankingGate gate,
            Planned planned,
            Adviser adviser,
            GarmentChoices choices,
            Shortlist shortlist,
            Fibres fibres) {
        this.gate = gate;
        this.planned = planned;
        this.adviser = adviser;
        this.choices = choices;
        this.shortlist = shortlist;
        this.fibres = fibres;
    }

    @GetMapping("/plan/cloths")
    String cloths(
            @ModelAttribute("form") AskedForm form,
            BindingResult binding,
            @ModelAttribute("filter") ClothFilter filter,
            BindingResult narrowing,
            Model model,
            HttpServletResponse response) {
        if (form.use().boundary().isPresent()) {
            return PlanPage.outside(form, model);
        }
        ClothSearch search = narrowing.hasErrors()
                ? ClothSearch.EVERYTHING
                : FormErrors.caught(narrowing, () -> filter.search(fibres)).orElse(ClothSearch.EVERYTHING);
        Optional<Planned.Question> question = binding.hasErrors()
                ? Optional.empty()
                : FormErrors.caught(binding, AskedForm::field, () -> planned.question(form, List::of));
        if (binding.hasErrors() || narrowing.hasErrors()) {
            response.setStatus(PlanPage.UNUSABLE);
        }
        if (question.isEmpty()) {
            choices.into(model, form, binding);
            return "plan/form";
        }
        ranked(question.get(), search, form, filter, model);
        return "plan/cloths";
    }

    private void ranked(Planned.Question about, ClothSearch search, AskedForm form, ClothFilter filter, Model model) {
        Shortlist.Ranked ranked = gate.through(
                () -> shortlist.rank(about.asked().question(), search, filter.shown() + filter.shownOut()));
        Ranking ranking = ranked.ranking();
        model.addAttribute("note", ranked.note());
        List<Integer> open = places(ranking, filter, false);
        List<Integer> out = places(ranking, filter, true);
        model.addAttribute("query", form.query());
        model.addAttribute("filterQuery", filter.query());
        model.addAttribute("parts", form.parts());
        model.addAttribute("event", EventLine.of(about.event(), fibres));
        model.addAttribute("garment", form.chosenDesign().name());
        model.addAttribute("worn", WornLine.of(adviser, about.asked().question()));
        model.addAttribute("presumed", about.asked().presumed(ranking));
        model.addAttribute("heeding", Heeding.of(ranking.cautions()));
        model.addAttribute("layers", ranking.layers().orElse(null));
        model.addAttribute(
                "layerPair",
                ranking.layers().flatMap(Layers::pair).map(LayerPair::because).orElse(null));
        model.addAttribute("suitable", ranking.count(Verdict.SUITABLE));
        model.addAttribute("caution", ranking.count(Verdict.CAUTION));
        model.addAttribute("ruledOut", ranking.count(Verdict.RULED_OUT));
        List<ClothCard> cards = cards(ranking, open, filter.shown());
        model.addAttribute("cards", cards);
        model.addAttribute("first", cards.stream().limit(FIRST).toList());
        model.addAttribute("outCards", cards(ranking, out, filter.shownOut()));
        model.addAttribute("openCount", open.size());
        model.addAttribute("outCount", out.size());
        model.addAttribute("shown", filter.shown());
        model.addAttribute("shownOut", filter.shownOut());
        model.addAttribute("step", ClothFilter.STEP);
        narrowing(model);
    }

    private void narrowing(Model model) {
        List<Choice> known = new ArrayList<>();
        known.add(new Choice("", choices.text("plan.filter.any")));
        fibres.all().stream()
                .sorted(Comparator.comparing(Fibre::name))
                .forEach(fibre -> known.add(new Choice(fibre.key(), fibre.name())));
        model.addAttribute("fibreChoices", known);
        model.addAttribute("weightChoices", any("plan.weight", WeightClass.values()));
        model.addAttribute("verdictChoices", any("frame.verdict", Verdict.values()));
    }

    private List<Choice> any(String family, Enum<?>[] values) {
        List<Choice> all = new ArrayList<>();
        all.add(new Choice("", choices.text("plan.filter.any")));
        all.addAll(choices.words(family, values));
        return all;
    }

    /** Places in the ranking, from 0, of what is shown. */
    private static List<Integer> places(Ranking ranking, ClothFilter filter, boolean ruledOut) {
        List<Judged> judged = ranking.judged();
        return IntStream.range(0, judged.size())
                .filter(i -> (judged.get(i).verdict() == Verdict.RULED_OUT) == ruledOut)
                .filter(i -> filter.shows(judged.get(i).verdict()))
                .boxed()
                .toList();
    }

    private static List<ClothCard> cards(Ranking ranking, List<Integer> places, int most) {
        return places.stream()
                .limit(most)
                .map(i -> ClothCard.of(i + 1, ranking.judged().get(i), ranking))
                .toList();
    }
}
