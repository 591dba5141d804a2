package campcloth.pages.cloths;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelReader;
import campcloth.figure.Figure;
import campcloth.pages.FormErrors;
import campcloth.pages.NotHere;
import campcloth.pages.OnceOnly;
import campcloth.pages.SharePages;
import campcloth.pages.Units;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The form for a cloth: a new one, a copy, or one that is changed. */
@Controller
class ClothFormPage {

    private static final String READ = "read";
    private static final String ROW = "row";
    private static final String PART = "part-";

    private final Cloths cloths;
    private final Fibres fibres;
    private final LabelReader labels;
    private final ClothFormView view;
    private final SharePages shares;
    private final OnceOnly once;

    ClothFormPage(
            Cloths cloths, Fibres fibres, LabelReader labels, ClothFormView view, SharePages shares, OnceOnly once) {
        this.cloths = cloths;
        this.fibres = fibres;
        this.labels = labels;
        this.view = view;
        this.shares = shares;
        this.once = once;
    }

    @GetMapping("/cloths/new")
    ModelAndView blank(@RequestParam Optional<String> from, @ModelAttribute("units") Units units) {
        Optional<Cloth> begun = from.map(id -> kept(id).cloth().copied());
        ClothForm form = begun.map(ClothForm::of).orElseGet(ClothForm::new);
        form.from = from.orElse(null);
        return view.shown(form, begun, units, HttpStatus.OK);
    }

    @PostMapping("/cloths/new")
    ModelAndView add(
            @ModelAttribute("form") ClothForm form,
            BindingResult binding,
            @RequestParam(defaultValue = "save") String act,
            @ModelAttribute("units") Units units) {
        Optional<Cloth> begun = Optional.ofNullable(form.from)
                .flatMap(cloths::byId)
                .map(kept -> kept.cloth().copied());
        Optional<ModelAndView> again = again(form, binding, act, begun, units);
        if (again.isPresent()) {
            return again.get();
        }
        Optional<Cloth> meant = meant(form, binding, begun);
        return meant.isEmpty()
                ? view.shown(form, begun, units, HttpStatus.UNPROCESSABLE_CONTENT)
                : new ModelAndView("redirect:"
                        + once.made(() -> "/cloths/" + cloths.add(meant.get()).id()));
    }

    @GetMapping("/cloths/{id}/edit")
    ModelAndView edit(@PathVariable String id, @ModelAttribute("units") Units units) {
        KeptCloth kept = kept(id);
        shares.checkMayChange("cloths", id);
        ClothForm form = ClothForm.of(kept.cloth());
        form.version = kept.version();
        return view.shown(form, Optional.of(kept.cloth()), units, HttpStatus.OK).addObject("kept", kept);
    }

    @PostMapping("/cloths/{id}/edit")
    ModelAndView change(
            @PathVariable String id,
            @ModelAttribute("form") ClothForm form,
            BindingResult binding,
            @RequestParam(defaultValue = "save") String act,
            @ModelAttribute("units") Units units) {
        KeptCloth kept = kept(id);
        Optional<Cloth> before = Optional.of(kept.cloth());
        Optional<ModelAndView> again = again(form, binding, act, before, units);
        if (again.isPresent()) {
            return again.get().addObject("kept", kept);
        }
        Optional<Cloth> meant = meant(form, binding, before);
        if (meant.isEmpty()) {
            return view.shown(form, before, units, HttpStatus.UNPROCESSABLE_CONTENT)
                    .addObject("kept", kept);
        }
        long shown = form.version == null ? -1 : form.version;
        Optional<Cloths.Change> change = shown == kept.version()
                ? FormErrors.caught(binding, ClothFormPage::field, () -> cloths.replace(id, shown, meant.get()))
                : Optional.of(new Cloths.Change.Stale(kept.version()));
        if (change.isEmpty()) {
            return view.shown(form, before, units, HttpStatus.UNPROCESSABLE_CONTENT)
                    .addObject("kept", kept);
        }
        return outcome(change.get(), id, form, units);
    }

    private ModelAndView outcome(Cloths.Change change, String id, ClothForm form, Units units) {
        if (change instanceof Cloths.Change.Done done) {
            return at(done.cloth());
        }
        KeptCloth now = kept(id);
        return view.conflict(form, now, fibres, units).addObject("kept", now);
    }

    /** Where the form only grows: its label is read, or it gets another row. */
    private Optional<ModelAndView> again(
            ClothForm form, BindingResult binding, String act, Optional<Cloth> before, Units units) {
        if (act.equals(READ) || act.startsWith(PART)) {
            return Optional.of(read(form, binding, act, before, units));
        }
        return act.equals(ROW)
                ? Optional.of(view.shown(form, before, units, HttpStatus.OK).addObject("more", true))
                : Optional.empty();
    }

    private ModelAndView read(ClothForm form, BindingResult binding, String act, Optional<Cloth> before, Units units) {
        Optional<ReadLabel> read = FormErrors.caught(
                        binding, () -> ReadLabel.into(form, binding, labels, part(act), view::text))
                .flatMap(found -> found);
        HttpStatus status = read.isPresent() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT;
        ModelAndView page = view.shown(form, before, units, status);
        read.ifPresent(label -> page.addObject("read", label));
        return page;
    }

    private static Optional<Integer> part(String act) {
        String number = act.startsWith(PART) ? act.substring(PART.length()) : "";
        return number.matches("\\d{1,3}") ? Optional.of(Integer.valueOf(number)) : Optional.empty();
    }

    /** The cloth that the form describes; a label counts where no fibres were typed. */
    private Optional<Cloth> meant(ClothForm form, BindingResult binding, Optional<Cloth> before) {
        if (binding.hasErrors()) {
            return Optional.empty();
        }
        if (form.label != null && !form.hasBlend()) {
            FormErrors.caught(binding, () -> ReadLabel.into(form, binding, labels, Optional.empty(), view::text));
        }
        Map<Property, Figure> shown = before.map(Cloth::figures).orElse(Map.of());
        return binding.hasErrors()
                ? Optional.empty()
                : FormErrors.caught(binding, ClothFormPage::field, () -> form.cloth(fibres, shown));
    }

    /** Figures stand in a part of the form by themselves. */
    private static String field(String refused) {
        boolean figure = Arrays.stream(Property.values()).map(Property::field).anyMatch(name -> name.equals(refused));
        return figure ? "figures." + refused : refused;
    }

    private KeptCloth kept(String id) {
        return cloths.byId(id).orElseThrow(() -> new NotHere("cloth"));
    }

    private static ModelAndView at(KeptCloth kept) {
        return new ModelAndView("redirect:/cloths/{id}", Map.of("id", kept.id()));
    }
}
