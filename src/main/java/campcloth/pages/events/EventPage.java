package campcloth.pages.events;

import campcloth.comfort.SpellNeeds;
import campcloth.demo.Demo;
import campcloth.event.Beaufort;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Events.Change;
import campcloth.event.KeptEvent;
import campcloth.event.KeptRules;
import campcloth.event.SafetyRule;
import campcloth.fibre.Fibres;
import campcloth.figure.Words;
import campcloth.fire.MissingRules;
import campcloth.fire.RuleConflicts;
import campcloth.pages.LinkKeys;
import campcloth.pages.NotHere;
import campcloth.pages.OnceOnly;
import campcloth.pages.SharePages;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One event: read, copied, removed, given the rules of another. */
@Controller
class EventPage {

    private static final String FAMILY = "events";
    private static final int VERSIONS = 20;
    private static final int OTHERS = 100;
    private static final int LONGEST_NAME = 200;
    private static final int TRIES = 5;

    private final Events events;
    private final Demo demo;
    private final Fibres fibres;
    private final SharePages shares;
    private final OnceOnly once;

    EventPage(Events events, Demo demo, Fibres fibres, SharePages shares, OnceOnly once) {
        this.events = events;
        this.demo = demo;
        this.fibres = fibres;
        this.shares = shares;
        this.once = once;
    }

    @GetMapping("/events/{id}")
    String one(@PathVariable String id, Model model) {
        KeptEvent kept = kept(id);
        Event event = kept.event();
        model.addAttribute("kept", kept);
        model.addAttribute("event", event);
        model.addAttribute(
                "needs",
                event.spells().stream()
                        .map(spell -> SpellNeeds.of(spell, event.place()))
                        .toList());
        model.addAttribute(
                "winds",
                event.spells().stream()
                        .map(spell -> Beaufort.of(spell.windMs()))
                        .toList());
        model.addAttribute("plans", FirePlans.of(event));
        rules(event.rules(), model);
        model.addAttribute("history", events.rulesHistory(id, VERSIONS).orElseThrow(() -> new NotHere("event")));
        model.addAttribute(
                "others",
                events.latest(0, OTHERS).events().stream()
                        .filter(other -> !other.id().equals(kept.id())
                                && !other.event().rules().isEmpty())
                        .toList());
        model.addAttribute(
                "isDemo", demo.things().stream().anyMatch(thing -> thing.id().equals(kept.id())));
        shares.into(model, FAMILY, id);
        return "events/event";
    }

    /** The rules as they stood. */
    @GetMapping("/events/{id}/rules/{version:[0-9]{1,15}}")
    String rulesThen(@PathVariable String id, @PathVariable long version, Model model) {
        KeptRules then = events.rulesAt(id, version).orElseThrow(() -> new NotHere("version"));
        model.addAttribute("kept", kept(id));
        model.addAttribute("then", then);
        rules(then.rules(), model);
        return "events/rules";
    }

    @PostMapping("/events/{id}/copy")
    String copy(@PathVariable String id) {
        Event event = kept(id).event();
        String name = "Copy of " + event.name();
        Event copy = new Event(
                name.substring(0, Words.cut(name, Math.min(name.length(), LONGEST_NAME))),
                event.season(),
                event.spells(),
                event.rules(),
                event.spellsPresumed(),
                event.dates(),
                event.latitudeDeg());
        return "redirect:" + once.made(() -> "/events/" + events.add(copy).id() + "/edit");
    }

    /** Takes over the rules of another event that are not there yet. */
    @PostMapping("/events/{id}/rules")
    String takeRules(@PathVariable String id, @RequestParam String from, HttpServletRequest request) {
        shares.checkMayChange(FAMILY, id);
        List<SafetyRule> others = kept(from).event().rules();
        for (int i = 0; i < TRIES; i++) {
            KeptEvent kept = kept(id);
            List<SafetyRule> all = new ArrayList<>(kept.event().rules());
            others.stream().filter(rule -> !all.contains(rule)).forEach(all::add);
            if (all.size() == kept.event().rules().size()
                    || events.replace(id, kept.version(), kept.event().withRules(all)) instanceof Change.Done) {
                return "redirect:/events/" + id + LinkKeys.of(request, "?") + "#rules";
            }
        }
        throw new IllegalStateException("the event is changed all the time");
    }

    @GetMapping("/events/{id}/remove")
    String ask(@PathVariable String id, Model model) {
        shares.checkMayRemove(FAMILY, id);
        model.addAttribute("kept", kept(id));
        return "events/remove";
    }

    @PostMapping("/events/{id}/remove")
    String remove(@PathVariable String id, @RequestParam long version, Model model, HttpServletResponse response) {
        Change change = events.remove(id, version);
        if (change instanceof Change.Missing) {
            throw new NotHere("event");
        }
        if (change instanceof Change.Stale) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("changed", true);
            return ask(id, model);
        }
        return "redirect:/events";
    }

    private void rules(List<SafetyRule> rules, Model model) {
        model.addAttribute("rules", rules);
        model.addAttribute("conflicts", RuleConflicts.of(rules, fibres));
        model.addAttribute(
                "missing",
                MissingRules.of(rules).stream()
                        .map(authority -> new Missing(authority, MissingRules.sentence(authority)))
                        .toList());
    }

    /** An authority without a rule on file, and what to do about it. */
    record Missing(SafetyRule.Authority authority, String text) {}

    private KeptEvent kept(String id) {
        return events.byId(id).orElseThrow(() -> new NotHere("event"));
    }
}
