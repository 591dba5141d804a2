package campcloth.pages.cloths;

import campcloth.cloth.Cloths;
import campcloth.cloth.Completeness;
import campcloth.cloth.Property;
import campcloth.figure.Basis;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** How much is known of the cloths of the catalogue, and which are worth measuring. */
@Controller
class CompletenessPage {

    private static final int WORTH_MEASURING = 20;

    private final Cloths cloths;

    CompletenessPage(Cloths cloths) {
        this.cloths = cloths;
    }

    @GetMapping("/cloths/completeness")
    String completeness(Model model) {
        Completeness completeness = Completeness.of(cloths, WORTH_MEASURING);
        model.addAttribute("whole", completeness.whole());
        model.addAttribute("gaps", completeness.worthMeasuring());
        model.addAttribute("bases", Basis.values());
        model.addAttribute("properties", Property.values());
        return "cloths/completeness";
    }
}
