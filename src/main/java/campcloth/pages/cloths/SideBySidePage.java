package campcloth.pages.cloths;

import campcloth.advice.ClothsBesides;
import campcloth.advice.FireSideBySide;
import campcloth.cloth.Cloths;
import campcloth.cloth.ComparedFigure;
import campcloth.cloth.Fit;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Layer;
import campcloth.cloth.SideBySide;
import campcloth.event.FireRole;
import campcloth.figure.Sources;
import campcloth.fire.Exposure;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import campcloth.pages.Units;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Cloths side by side, figure by figure, fire apart. */
@Controller
class SideBySidePage {

    private final Cloths cloths;
    private final Sources sources;
    private final MessageSource texts;

    SideBySidePage(Cloths cloths, Sources sources, MessageSource texts) {
        this.cloths = cloths;
        this.sources = sources;
        this.texts = texts;
    }

    /**
     * One of the cloths.
     *
     * @param bestAt what it is clearly best at; empty where the fire rules it out
     * @param without address of the comparison without it
     */
    public record Column(KeptCloth kept, List<String> bestAt, boolean ruledOut, String without) {}

    /** One figure of all the cloths; a cell is empty where it is neither known nor estimated. */
    public record Row(String field, String contrast, List<Optional<ShownFigure>> cells) {}

    @GetMapping("/cloths/compare")
    String compare(
            @ModelAttribute("form") CompareForm form,
            BindingResult binding,
            @ModelAttribute("units") Units units,
            Model model,
            HttpServletResponse response) {
        List<KeptCloth> kept = cloths.byIds(form.ids());
        model.addAttribute("lost", form.ids().size() - kept.size());
        model.addAttribute("more", form.more());
        model.addAttribute("kept", kept);
        model.addAttribute("roles", roles());
        model.addAttribute("notes", ClothsBesides.NOTES);
        if (kept.size() >= SideBySide.LEAST) {
            FormErrors.caught(binding, () -> besides(kept, form))
                    .ifPresent(besides -> show(besides, kept, form, units, model));
        }
        if (binding.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return "cloths/compare";
    }

    private static ClothsBesides besides(List<KeptCloth> kept, CompareForm form) {
        SideBySide compared = SideBySide.of(kept.stream().map(KeptCloth::cloth).toList());
        Exposure exposure = form.exposure();
        return new ClothsBesides(
                compared, Optional.of(FireSideBySide.of(compared.cloths(), exposure, Fit.LOOSE, Layer.OUTER)));
    }

    private void show(ClothsBesides besides, List<KeptCloth> kept, CompareForm form, Units units, Model model) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            KeptCloth one = kept.get(i);
            columns.add(new Column(one, besides.bestAt(i), besides.rulesOut(i), form.without(one.id())));
        }
        model.addAttribute("columns", columns);
        model.addAttribute(
                "rows",
                besides.compared().figures().stream()
                        .map(figure -> row(figure, units))
                        .toList());
        model.addAttribute("fire", besides.fire().orElseThrow());
    }

    private Row row(ComparedFigure figure, Units units) {
        ComparedFigure.Quantity quantity = figure.quantity();
        return new Row(
                quantity.field(),
                figure.contrast().name(),
                figure.values().stream()
                        .map(cell -> cell.map(
                                known -> ShownFigure.of(quantity.field(), quantity.unit(), known, units, sources)))
                        .toList());
    }

    private List<Choice> roles() {
        return Arrays.stream(FireRole.values())
                .filter(role -> role != FireRole.NONE)
                .map(role ->
                        new Choice(role.name(), texts.getMessage("cloths.role." + role.name(), null, Locale.ENGLISH)))
                .toList();
    }
}
