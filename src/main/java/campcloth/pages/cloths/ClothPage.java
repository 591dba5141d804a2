package campcloth.pages.cloths;

import campcloth.cloth.Alike;
import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.Estimates;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.Swatches;
import campcloth.cloth.ToldDoubts;
import campcloth.figure.Figure;
import campcloth.figure.Sources;
import campcloth.pages.NotHere;
import campcloth.pages.SharePages;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** One cloth: all that is known of it, from where and how surely. */
@Controller
class ClothPage {

    private static final String FAMILY = "cloths";
    private static final int NEIGHBOURS = 5;

    private final Cloths cloths;
    private final Swatches swatches;
    private final Sources sources;
    private final SharePages shares;

    ClothPage(Cloths cloths, Swatches swatches, Sources sources, SharePages shares) {
        this.cloths = cloths;
        this.swatches = swatches;
        this.sources = sources;
        this.shares = shares;
    }

    @GetMapping("/cloths/{id}")
    String one(@PathVariable String id, @ModelAttribute("units") Units units, Model model) {
        KeptCloth kept = kept(id);
        Cloth cloth = kept.cloth();
        Cloth completed = Estimates.complete(cloth);
        model.addAttribute("kept", kept);
        model.addAttribute("cloth", cloth);
        model.addAttribute("from", From.of(kept));
        model.addAttribute("doubts", ToldDoubts.of(cloth));
        model.addAttribute("figures", figures(completed, units));
        model.addAttribute("unpriced", cloth.figure(Property.PRICE_PER_METRE).isEmpty());
        model.addAttribute("fire", AtTheFire.of(completed));
        model.addAttribute(
                "swatches",
                swatches.of(id)
                        .map(history -> SwatchView.all(history, units, sources))
                        .orElse(List.of()));
        model.addAttribute("alike", Alike.to(kept, cloths, NEIGHBOURS).neighbours());
        shares.into(model, FAMILY, id);
        return "cloths/cloth";
    }

    /** Asks once more: without scripts a page is the only way to ask. */
    @GetMapping("/cloths/{id}/remove")
    String mayItGo(@PathVariable String id, Model model) {
        shares.checkMayRemove(FAMILY, id);
        model.addAttribute("kept", kept(id));
        model.addAttribute("stale", false);
        return "cloths/remove";
    }

    @PostMapping("/cloths/{id}/remove")
    ModelAndView remove(@PathVariable String id, @RequestParam long version) {
        Cloths.Change change = cloths.remove(id, version);
        if (change instanceof Cloths.Change.Missing) {
            throw new NotHere("cloth");
        }
        if (change instanceof Cloths.Change.Stale) {
            ModelAndView again = new ModelAndView("cloths/remove", HttpStatus.CONFLICT);
            again.addObject("kept", kept(id));
            again.addObject("stale", true);
            return again;
        }
        return new ModelAndView("redirect:/cloths?removed=yes");
    }

    private List<ShownFigure> figures(Cloth completed, Units units) {
        List<ShownFigure> figures = new ArrayList<>();
        for (Property property : Property.values()) {
            completed
                    .figure(property)
                    .map((Figure figure) -> ShownFigure.of(property, figure, units, sources))
                    .ifPresent(figures::add);
        }
        return figures;
    }

    private KeptCloth kept(String id) {
        return cloths.byId(id).orElseThrow(() -> new NotHere("cloth"));
    }
}
