package campcloth.pages.sheet;

import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.job.LayoutGate;
import campcloth.layout.CuttingSheet;
import campcloth.layout.LayoutDrawing;
import campcloth.pages.NotHere;
import campcloth.pages.SharePages;
import campcloth.pages.Units;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The kept plan sheets: the latest of them, and each by itself. */
@Controller
@RequestMapping("/sheets")
class SheetPage {

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final String FAMILY = "sheets";
    private static final int MOST_LISTED = 50;

    private final Errands errands;
    private final KeptSheets sheets;
    private final SheetPdf pdf;
    private final LayoutGate gate;
    private final SharePages shares;

    SheetPage(Errands errands, KeptSheets sheets, SheetPdf pdf, LayoutGate gate, SharePages shares) {
        this.pdf = pdf;
        this.gate = gate;
        this.shares = shares;
        this.errands = errands;
        this.sheets = sheets;
    }

    @GetMapping
    String latest(Model model) {
        List<KeptErrand> kept = errands.latest(MOST_LISTED);
        model.addAttribute("kept", kept);
        model.addAttribute(
                "mayDelete",
                shares.changeable(FAMILY, kept.stream().map(KeptErrand::id).toList()));
        return "sheet/list";
    }

    @GetMapping("/{id}")
    String one(@PathVariable String id, Model model) {
        model.addAttribute("view", sheets.view(id));
        shares.into(model, FAMILY, id);
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

    /** The same to print and to carry; in turn with what else takes long. */
    @GetMapping("/{id}.pdf")
    ResponseEntity<byte[]> pdf(
            @PathVariable String id,
            @RequestParam(defaultValue = "a4") String paper,
            @ModelAttribute("units") Units units) {
        Paper chosen = Paper.of(paper)
                .orElseThrow(
                        () -> Refused.of("paper", Words.quoted(paper) + " is not known here", "give a4 or letter"));
        SheetView view = sheets.view(id);
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"plan-sheet.pdf\"")
                .body(gate.through(() -> pdf.of(view, chosen, units)));
    }

    @PostMapping("/{id}/delete")
    String delete(@PathVariable String id, @RequestParam(defaultValue = "false") boolean sure, Model model) {
        if (!sure) {
            shares.checkMayRemove(FAMILY, id);
            model.addAttribute("kept", sheets.kept(id));
            return "sheet/delete";
        }
        if (!errands.remove(id)) {
            throw new NotHere("sheet");
        }
        return "redirect:/sheets";
    }
}
