package campcloth.pages.sheet;

import campcloth.errand.Errands;
import campcloth.layout.CuttingSheet;
import campcloth.layout.LayoutDrawing;
import campcloth.pages.NotHere;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The kept plan sheets: the latest of them, and each by itself. */
@Controller
@RequestMapping("/sheets")
class SheetPage {

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final int MOST_LISTED = 50;

    private final Errands errands;
    private final KeptSheets sheets;

    SheetPage(Errands errands, KeptSheets sheets) {
        this.errands = errands;
        this.sheets = sheets;
    }

    @GetMapping
    String latest(Model model) {
        model.addAttribute("kept", errands.latest(MOST_LISTED));
        return "sheet/list";
    }

    @GetMapping("/{id}")
    String one(@PathVariable String id, Model model) {
        model.addAttribute("view", sheets.view(id));
        model.addAttribute(
                "address",
                ServletUriComponentsBuilder.fromCurrentRequestUri().build().toUriString());
        return "sheet/sheet";
    }

    /** The drawing that fits a page, or the large one to chalk from. */
    @GetMapping("/{id}/layout.svg")
    ResponseEntity<String> layout(@PathVariable String id, @RequestParam(defaultValue = "false") boolean large) {
        CuttingSheet drawn = sheets.drawn(id);
        return ResponseEntity.ok()
                .contentType(SVG)
                .body(large ? LayoutDrawing.svg(drawn) : LayoutDrawing.onePage(drawn));
    }

    @PostMapping("/{id}/delete")
    String delete(@PathVariable String id, @RequestParam(defaultValue = "false") boolean sure, Model model) {
        if (!sure) {
            model.addAttribute("kept", sheets.kept(id));
            return "sheet/delete";
        }
        if (!errands.remove(id)) {
            throw new NotHere("sheet");
        }
        return "redirect:/sheets";
    }
}
