package campcloth.pages.events;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Events.Change;
import campcloth.event.KeptEvent;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.pages.FormErrors;
import campcloth.pages.LinkKeys;
import campcloth.pages.NotHere;
import campcloth.pages.OnceOnly;
import campcloth.pages.SharePages;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.InitBinder;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The form of an event, new or kept. Its buttons for rows send the whole form and have it shown again. Who may change nothing but the
 * rules gets nothing else to fill in, so that what was rounded for reading comes back as no change.
 */
@Controller
class EventFormPage {

    private static final String RULES_ONLY = "rulesOnly";
    private static final String NEW = "/events/new";

    private final Events events;
    private final Seasons seasons;
    private final Fibres fibres;
    private final SharePages shares;
    private final OnceOnly once;

    EventFormPage(Events events, Seasons seasons, Fibres fibres, SharePages shares, OnceOnly once) {
        this.events = events;
        this.seasons = seasons;
        this.fibres = fibres;
        this.shares = shares;
        this.once = once;
    }

    @InitBinder("form")
    void rowsThatGo(WebDataBinder binder, @RequestParam(name = "do", required = false) @Nullable String button) {
        Rows.pressed(button).flatMap(Rows::unread).ifPresent(binder::setDisallowedFields);
    }

    @GetMapping(NEW)
    String fresh(@RequestParam(defaultValue = "SUMMER") String season, Model model) {
        Season chosen = Arrays.stream(Season.values())
                .filter(known -> known.name().equals(season))
                .findFirst()
                .orElse(Season.SUMMER);
        model.addAttribute("form", EventForm.usual(chosen, seasons));
        return shown(model, NEW, "");
    }

    @GetMapping("/events/{id}/edit")
    String edit(@PathVariable String id, Model model) {
        KeptEvent kept = events.byId(id).orElseThrow(() -> new NotHere("event"));
        shares.checkMayChange("events", id);
        model.addAttribute(RULES_ONLY, shares.onlyRules(id));
        EventForm form = EventForm.of(kept.event());
        form.version = kept.version();
        model.addAttribute("form", form);
        return shown(model, address(kept.id()), "");
    }

    @PostMapping(NEW)
    String add(
            @ModelAttribute("form") EventForm form,
            BindingResult typed,
            @RequestParam(name = "do", required = false) @Nullable String button,
            Model model,
            HttpServletResponse response) {
        Optional<Rows> rows = Rows.pressed(button);
        if (rows.isPresent()) {
            return changed(rows.get(), form, typed, model, NEW);
        }
        return event(form, typed, Optional.empty())
                .map(event -> "redirect:"
                        + once.made(() -> "/events/" + events.add(event).id()))
                .orElseGet(() -> refused(model, response, NEW));
    }

    @PostMapping("/events/{id}/edit")
    String replace(
            @PathVariable String id,
            @ModelAttribute("form") EventForm form,
            BindingResult typed,
            @RequestParam(name = "do", required = false) @Nullable String button,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Optional<KeptEvent> kept = events.byId(id);
        String address = kept.map(there -> address(there.id())).orElse(NEW);
        boolean rulesOnly = kept.isPresent() && shares.onlyRules(id);
        model.addAttribute(RULES_ONLY, rulesOnly);
        Optional<Rows> rows = Rows.pressed(button);
        if (rows.isPresent()) {
            return changed(rows.get(), form, typed, model, address);
        }
        Optional<Event> event =
                rulesOnly ? ruled(form, typed, kept.get().event()) : event(form, typed, kept.map(KeptEvent::event));
        if (event.isEmpty()) {
            return refused(model, response, address);
        }
        long version = form.version == null ? -1 : form.version;
        Optional<Change> change =
                FormErrors.caught(typed, EventForm::field, () -> events.replace(id, version, event.get()));
        if (change.isEmpty()) {
            return refused(model, response, address);
        }
        return change.get() instanceof Change.Done
                ? "redirect:/events/" + id + LinkKeys.of(request, "?")
                : outOfDate(form, event.get(), events.byId(id), model, response);
    }

    private String changed(Rows rows, EventForm form, BindingResult typed, Model model, String address) {
        rows.apply(form, seasons, !typed.hasErrors());
        return shown(model, address, rows.next(form));
    }

    private String refused(Model model, HttpServletResponse response, String address) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return shown(model, address, "");
    }

    /** Somebody else changed or removed it: what was typed stays, what is kept is told beside it. */
    private String outOfDate(
            EventForm form, Event typed, Optional<KeptEvent> now, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.CONFLICT.value());
        model.addAttribute("outOfDate", now.isPresent() ? "changed" : "removed");
        model.addAttribute(
                "differences",
                now.map(kept -> Differences.between(kept.event(), typed)).orElse(List.of()));
        form.version = now.map(KeptEvent::version).orElse(null);
        return shown(model, now.map(kept -> address(kept.id())).orElse(NEW), "");
    }

    private Optional<Event> ruled(EventForm form, BindingResult typed, Event before) {
        Optional<Event> event = FormErrors.caught(typed, EventForm::field, () -> before.withRules(form.rules(fibres)));
        return event.filter(all -> !typed.hasErrors());
    }

    private Optional<Event> event(EventForm form, BindingResult typed, Optional<Event> before) {
        Optional<Event> event = FormErrors.caught(typed, EventForm::field, () -> form.event(seasons, fibres, before));
        return event.filter(all -> !typed.hasErrors());
    }

    private String shown(Model model, String address, String next) {
        model.addAttribute("address", address);
        model.addAttribute("isNew", address.equals(NEW));
        model.addAttribute("next", next);
        model.addAttribute("fibres", fibres.all());
        model.addAttribute("choices", EventChoices.all());
        return "events/form";
    }

    private static String address(String id) {
        return "/events/" + id + "/edit";
    }
}
