package campcloth.pages.accounts;

import campcloth.access.AuditEntry;
import campcloth.access.AuditTrail;
import campcloth.access.Mode;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The audit log, for administrators. */
@Controller
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
class AuditPage {

    private static final int ON_A_PAGE = 100;
    private static final int LAST_PAGE = 100_000;

    private final AuditTrail trail;

    AuditPage(AuditTrail trail) {
        this.trail = trail;
    }

    /** @param page counted from 1 */
    @GetMapping("/audit")
    String shown(@RequestParam(defaultValue = "1") int page, Model model) {
        int number = Math.min(Math.max(page, 1), LAST_PAGE);
        List<AuditEntry> entries = trail.latest(number - 1, ON_A_PAGE);
        model.addAttribute("entries", entries);
        model.addAttribute("page", number);
        model.addAttribute("more", entries.size() == ON_A_PAGE);
        model.addAttribute("keptDays", AuditTrail.KEPT.toDays());
        return "accounts/audit";
    }
}
