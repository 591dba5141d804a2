package campcloth.pages.events;

import campcloth.demo.Demo;
import campcloth.demo.DemoThing;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/** The demo: what it put in, what became of it; removed and brought back by one button each. */
@Controller
class DemoPage {

    private final Demo demo;

    DemoPage(Demo demo) {
        this.demo = demo;
    }

    @GetMapping("/demo")
    String shown(Model model) {
        List<DemoThing> things = demo.things();
        model.addAttribute("things", things);
        model.addAttribute("demoThere", Demo.isThere(things));
        model.addAttribute(
                "canBringBack",
                things.isEmpty() || things.stream().anyMatch(thing -> thing.standing() == DemoThing.Standing.REMOVED));
        return "events/demo";
    }

    @PostMapping("/demo/remove")
    String remove() {
        demo.remove();
        return "redirect:/demo";
    }

    @PostMapping("/demo/bring-back")
    String bringBack() {
        demo.bringBack();
        return "redirect:/demo";
    }
}
