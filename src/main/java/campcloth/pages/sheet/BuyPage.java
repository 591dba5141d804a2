package campcloth.pages.sheet;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.Estimates;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.errand.ChosenCloth;
import campcloth.errand.Errand;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.errand.TakenEvent;
import campcloth.errand.WantedGarment;
import campcloth.errand.WornWith;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Seasons;
import campcloth.fire.ClothingUse;
import campcloth.garment.Design;
import campcloth.garment.SewnBy;
import campcloth.garment.Sizes;
import campcloth.job.LayoutGate;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import campcloth.pages.NotHere;
import campcloth.pages.OnceOnly;
import campcloth.pages.plan.AskedForm;
import campcloth.pages.plan.GarmentChoices;
import campcloth.pages.plan.MeasureLine;
import campcloth.pages.plan.WornLayers;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.Fold;
import campcloth.plan.KeptPlan;
import campcloth.plan.Plans;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The cloth is chosen: what the shop tells of it and how the garment is cut, and from that the sheet that is kept. */
@Controller
class BuyPage {

    private static final int LONGEST_TITLE = 200;

    private final Cloths cloths;
    private final Events events;
    private final Seasons seasons;
    private final Sizes sizes;
    private final CuttingPlanner planner;
    private final LayoutGate gate;
    private final Plans plans;
    private final Errands errands;
    private final Clock clock;
    private final MessageSource texts;
    private final OnceOnly once;
    private final WornLayers worn;

    BuyPage(
            Cloths cloths,
            Events events,
            Seasons seasons,
            Sizes sizes,
            CuttingPlanner planner,
            LayoutGate gate,
            Plans plans,
            Errands errands,
            Clock clock,
            MessageSource texts,
            OnceOnly once,
            WornLayers worn) {
        this.cloths = cloths;
        this.events = events;
        this.seasons = seasons;
        this.sizes = sizes;
        this.planner = planner;
        this.gate = gate;
        this.plans = plans;
        this.errands = errands;
        this.clock = clock;
        this.texts = texts;
        this.once = once;
        this.worn = worn;
    }

    @GetMapping("/plan/buy")
    String form(@ModelAttribute("asked") AskedForm asked, @RequestParam String cloth, Model model) {
        asked.event(events, seasons);
        asked.measurements(sizes);
        model.addAttribute("form", BuyForm.usual(asked.chosenDesign(), asked.garment()));
        return page(asked, kept(cloth), model, "");
    }

    @PostMapping("/plan/sheets")
    String keep(
            @RequestParam("asked") String askedText,
            @RequestParam String cloth,
            @ModelAttribute("form") BuyForm form,
            BindingResult binding,
            @RequestParam(name = "do", required = false) @Nullable String button,
            Model model,
            HttpServletResponse response) {
        AskedForm asked = AskedText.read(askedText);
        KeptCloth kept = kept(cloth);
        Design design = asked.chosenDesign();
        form.take(asked.garment());
        Optional<WearerRows> rows = WearerRows.pressed(button);
        if (rows.isPresent()) {
            return page(asked, kept, model, rows.get().apply(form, !binding.hasErrors()));
        }
        form.others.removeIf(other -> other.gone && !binding.hasErrors());
        boolean advised = ordinary(asked);
        Optional<String> sheet = binding.hasErrors() || !advised
                ? Optional.empty()
                : FormErrors.caught(
                        binding,
                        path -> BuyForm.field(path, design),
                        () -> once.made(
                                () -> "/sheets/" + kept(asked, kept, form).id()));
        if (sheet.isPresent()) {
            return "redirect:" + sheet.get();
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(asked, kept, model, "");
    }

    private KeptErrand kept(AskedForm asked, KeptCloth chosen, BuyForm form) {
        Design design = asked.chosenDesign();
        TakenEvent event = asked.event(events, seasons);
        WantedGarment garment = form.garment(asked.garment(worn.of(asked, event.event())), design);
        Cloth told = form.told(chosen.cloth());
        CuttingOrder order = form.order(told, garment, sizes);
        String title = form.title == null ? title(design, event, told) : form.title;
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        Errand checked = new Errand(title, event, garment, new ChosenCloth(chosen.id(), told), "", now);
        KeptPlan plan = plans.add(gate.through(() -> planner.plan(order)));
        return errands.add(new Errand(title, event, garment, checked.cloth(), plan.id(), now));
    }

    private static String title(Design design, TakenEvent event, Cloth cloth) {
        String name = event.event().name();
        String title = name.isEmpty()
                ? design.name() + ": " + cloth.name()
                : design.name() + ", " + name + ": " + cloth.name();
        return title.length() <= LONGEST_TITLE ? title : design.name();
    }

    private KeptCloth kept(String id) {
        return cloths.byId(id).orElseThrow(() -> new NotHere("cloth"));
    }

    private static boolean ordinary(AskedForm asked) {
        return asked.use == null || asked.use == ClothingUse.ORDINARY;
    }

    private String page(AskedForm asked, KeptCloth chosen, Model model, String next) {
        Cloth cloth = Estimates.complete(chosen.cloth());
        model.addAttribute("asked", asked);
        model.addAttribute("query", asked.query());
        model.addAttribute("boundary", asked.use == null ? Optional.empty() : asked.use.boundary());
        model.addAttribute("design", asked.chosenDesign());
        model.addAttribute("next", next);
        model.addAttribute("measures", MeasureLine.of(asked.chosenDesign()));
        model.addAttribute("sizes", GarmentChoices.sizeChoices(sizes, text("plan.size.none")));
        model.addAttribute("mostOthers", WantedGarment.MOST_OTHERS);
        model.addAttribute("folds", choices(Fold.values(), "sheet.fold."));
        model.addAttribute("hands", choices(SewnBy.values(), "sheet.sewnBy."));
        Event event = asked.event(events, seasons).event();
        model.addAttribute("event", event);
        model.addAttribute("with", WornWith.of(worn.of(asked, event)));
        model.addAttribute("cloth", chosen);
        model.addAttribute("width", cloth.required(Property.WIDTH_CM));
        model.addAttribute("price", cloth.figure(Property.PRICE_PER_METRE));
        model.addAttribute("washable", !cloth.finish().closesPores());
        return "sheet/buy";
    }

    private List<Choice> choices(Enum<?>[] values, String key) {
        return Arrays.stream(values)
                .map(value -> new Choice(value.name(), text(key + value.name())))
                .toList();
    }

    private String text(String key) {
        return texts.getMessage(key, null, Locale.ENGLISH);
    }
}
