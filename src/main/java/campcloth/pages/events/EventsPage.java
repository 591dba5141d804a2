package campcloth.pages.events;

import campcloth.demo.Demo;
import campcloth.demo.DemoThing;
import campcloth.event.Events;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The events that are kept. */
@Controller
class EventsPage {

    private static final int ON_A_PAGE = 25;
    private static final int LAST_PAGE = 100_000;

    private final Events events;
    private final Demo demo;

    EventsPage(Events events, Demo demo) {
        this.events = events;
        this.demo = demo;
    }

    /** @param page counted from 1 */
    @GetMapping("/events")
    String list(@RequestParam(defaultValue = "1") int page, Model model) {
        int number = Math.min(Math.max(page, 1), LAST_PAGE);
        Events.Page found = events.latest(number - 1, ON_A_PAGE);
        List<DemoThing> things = demo.things();
        model.addAttribute("found", found);
        model.addAttribute("page", number);
        model.addAttribute("pages", Math.max(1, (found.total() + ON_A_PAGE - 1) / ON_A_PAGE));
        model.addAttribute("demoIds", things.stream().map(DemoThing::id).collect(Collectors.toSet()));
        model.addAttribute("demoThere", Demo.isThere(things));
        return "events/list";
    }
}
