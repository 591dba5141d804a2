package campcloth.pages;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Where everybody begins. */
@Controller
class HomePage {

    @GetMapping("/")
    String home() {
        return "home";
    }
}
