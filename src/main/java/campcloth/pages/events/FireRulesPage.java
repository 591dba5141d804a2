package campcloth.pages.events;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.SafetyRule;
import campcloth.fibre.Fibres;
import campcloth.fire.FireCautions;
import campcloth.fire.MissingRules;
import campcloth.fire.RuleConflicts;
import campcloth.pages.NotHere;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;

/** The fire rules of a camp on a sheet to hang up, and the picture of the distances around each fire. */
@Controller
class FireRulesPage {

    private final Events events;
    private final Fibres fibres;
    private final Clock clock;

    FireRulesPage(Events events, Fibres fibres, Clock clock) {
        this.events = events;
        this.fibres = fibres;
        this.clock = clock;
    }

    @GetMapping("/events/{id}/fire-rules")
    String sheet(@PathVariable String id, Model model) {
        KeptEvent kept = kept(id);
        Event event = kept.event();
        model.addAttribute("kept", kept);
        model.addAttribute("event", event);
        model.addAttribute(
                "rules",
                event.rules().stream()
                        .sorted(Comparator.comparing(SafetyRule::authority))
                        .toList());
        model.addAttribute("conflicts", RuleConflicts.of(event.rules(), fibres));
        model.addAttribute(
                "missing",
                MissingRules.of(event.rules()).stream()
                        .map(authority -> new EventPage.Missing(authority, MissingRules.sentence(authority)))
                        .toList());
        model.addAttribute("plans", FirePlans.of(event));
        model.addAttribute(
                "cautions",
                List.of(
                        FireCautions.MELTING,
                        FireCautions.RAISED_AND_LOOSE,
                        FireCautions.AT_THE_FIRE,
                        FireCautions.THREAD_AND_TRIMS,
                        FireCautions.FUEL_ON_CLOTH));
        model.addAttribute("inNeed", List.of(FireCautions.FIRST_AID, FireCautions.MEDICAL_HELP));
        model.addAttribute("whoseWord", List.of(FireCautions.RULES_WIN, FireCautions.FIRE_BAN));
        model.addAttribute("printedOn", LocalDate.now(clock));
        return "events/fire-rules";
    }

    /** @param fire which of the event's fires, counted from 0 */
    @GetMapping(value = "/events/{id}/pictures/fire.svg", produces = "image/svg+xml")
    @ResponseBody
    String picture(@PathVariable String id, @RequestParam(defaultValue = "0") int fire) {
        List<FirePlans.Plan> plans = FirePlans.of(kept(id).event());
        if (fire < 0 || fire >= plans.size()) {
            throw new NotHere("fire");
        }
        return plans.get(fire).svg();
    }

    private KeptEvent kept(String id) {
        return events.byId(id).orElseThrow(() -> new NotHere("event"));
    }
}
