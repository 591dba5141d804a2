package campcloth.pages.found;

import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchGuide;
import campcloth.cloth.SwatchHistory;
import campcloth.cloth.Swatches;
import campcloth.cloth.Swatches.Outcome;
import campcloth.cloth.Washing;
import campcloth.figure.Sources;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import campcloth.pages.LinkKeys;
import campcloth.pages.NotHere;
import campcloth.pages.OnceOnly;
import campcloth.pages.SharePages;
import campcloth.pages.Units;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Measuring a cloth at home: what to do, what was measured, what follows. */
@Controller
@RequestMapping("/cloths/{id}/swatches")
class SwatchPages {

    private static final String FORM = "found/swatch-form";
    private static final String FAMILY = "cloths";
    private static final int MOST_REFERENCES = 200;
    private static final int MORE_ROWS = 3;

    private final Swatches swatches;
    private final Cloths cloths;
    private final Sources sources;
    private final MessageSource texts;
    private final Clock clock;
    private final SharePages shares;
    private final OnceOnly once;

    SwatchPages(
            Swatches swatches,
            Cloths cloths,
            Sources sources,
            MessageSource texts,
            Clock clock,
            SharePages shares,
            OnceOnly once) {
        this.swatches = swatches;
        this.cloths = cloths;
        this.sources = sources;
        this.texts = texts;
        this.clock = clock;
        this.shares = shares;
        this.once = once;
    }

    @GetMapping
    String all(@PathVariable String id, HttpServletRequest request) {
        return "redirect:/cloths/" + cloth(id).id() + LinkKeys.of(request, "?");
    }

    @GetMapping("/new")
    String form(@PathVariable String id, @ModelAttribute("form") SwatchForm form, Model model, Locale locale) {
        shares.checkMayChange(FAMILY, id);
        form.measuredOn = LocalDate.now(clock).toString();
        return shown(cloth(id), form, 0, model, locale);
    }

    @PostMapping("/new")
    String add(
            @PathVariable String id,
            @RequestParam Optional<Integer> more,
            @ModelAttribute("form") SwatchForm form,
            BindingResult errors,
            Model model,
            Locale locale,
            HttpServletResponse response) {
        KeptCloth cloth = cloth(id);
        if (more.isPresent()) {
            return shown(cloth, form, Math.max(0, Math.min(more.get(), MORE_ROWS * MORE_ROWS)), model, locale);
        }
        if (!errors.hasErrors()) {
            form.tidy();
            Optional<String> kept = FormErrors.caught(
                    errors,
                    SwatchForm::field,
                    () -> once.made(() -> "/cloths/" + cloth.id() + "/swatches/"
                            + kept(cloth, form).id()));
            if (kept.isPresent()) {
                return "redirect:" + kept.get();
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return shown(cloth, form, 0, model, locale);
    }

    private KeptSwatch kept(KeptCloth cloth, SwatchForm form) {
        Swatch swatch = form.swatch(LocalDate.now(clock), cloths, cloth.id());
        return done(swatches.add(cloth.id(), swatch)).swatch();
    }

    private String shown(KeptCloth cloth, SwatchForm form, int more, Model model, Locale locale) {
        form.makeRoom(more);
        model.addAttribute("cloth", cloth);
        model.addAttribute("first", SwatchGuide.FIRST);
        model.addAttribute("guide", SwatchGuide.ALL);
        model.addAttribute("references", references(cloth));
        model.addAttribute("methods", choices("found.swatch.method.", Washing.Method.values(), locale));
        model.addAttribute("dryings", choices("found.swatch.drying.", Washing.Drying.values(), locale));
        model.addAttribute("more", more + MORE_ROWS);
        return FORM;
    }

    /** Cloths whose air permeability somebody measured or declared, with none of them first. */
    private List<Choice> references(KeptCloth measured) {
        ClothColumns columns = cloths.columns(ClothSearch.EVERYTHING);
        List<String> ids = IntStream.range(0, columns.rows())
                .filter(row -> columns.holds(row) && columns.permeabilityIsKnown(row))
                .mapToObj(columns::id)
                .filter(id -> !id.equals(measured.id()))
                .limit(MOST_REFERENCES)
                .toList();
        List<Choice> known = cloths.byIds(ids).stream()
                .map(kept -> new Choice(kept.id(), kept.cloth().name()))
                .toList();
        return known.isEmpty()
                ? known
                : Stream.concat(Stream.of(new Choice("", "-")), known.stream()).toList();
    }

    private List<Choice> choices(String text, Enum<?>[] values, Locale locale) {
        return Stream.concat(
                        Stream.of(new Choice("", texts.getMessage("found.swatch.notTold", null, locale))),
                        Arrays.stream(values)
                                .map(value ->
                                        new Choice(value.name(), texts.getMessage(text + value.name(), null, locale))))
                .toList();
    }

    @GetMapping("/{swatchId}")
    String one(
            @PathVariable String id, @PathVariable String swatchId, @ModelAttribute("units") Units units, Model model) {
        show(id, swatchId, units, model);
        return "found/swatch";
    }

    @GetMapping("/{swatchId}/remove")
    String sure(
            @PathVariable String id, @PathVariable String swatchId, @ModelAttribute("units") Units units, Model model) {
        shares.checkMayRemove(FAMILY, id);
        show(id, swatchId, units, model);
        return "found/swatch-remove";
    }

    @PostMapping("/{swatchId}/remove")
    String remove(@PathVariable String id, @PathVariable String swatchId) {
        done(swatches.remove(id, swatchId));
        return "redirect:/cloths/" + cloth(id).id();
    }

    private void show(String id, String swatchId, @ModelAttribute("units") Units units, Model model) {
        KeptCloth cloth = cloth(id);
        SwatchHistory history = swatches.of(id).orElseThrow(() -> new NotHere("cloth"));
        KeptSwatch kept = history.byId(swatchId).orElseThrow(() -> new NotHere("swatch"));
        model.addAttribute("cloth", cloth);
        shares.into(model, FAMILY, id);
        model.addAttribute("result", SwatchResult.of(kept, history, cloth.cloth(), units, sources));
    }

    private KeptCloth cloth(String id) {
        return cloths.byId(id).orElseThrow(() -> new NotHere("cloth"));
    }

    private static Outcome.Done done(Outcome outcome) {
        if (outcome instanceof Outcome.Done done) {
            return done;
        }
        if (outcome instanceof Outcome.Full full) {
            throw full.refused();
        }
        throw new NotHere(outcome instanceof Outcome.NoSwatch ? "swatch" : "cloth");
    }
}
