package campcloth.pages;

import campcloth.demo.Demo;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Where everybody begins. */
@Controller
class HomePage {

    private final Demo demo;

    HomePage(Demo demo) {
        this.demo = demo;
    }

    @GetMapping("/")
    String home(Model model) {
        model.addAttribute("demoThere", Demo.isThere(demo.things()));
        return "home";
    }
}
