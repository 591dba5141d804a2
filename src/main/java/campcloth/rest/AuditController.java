package campcloth.rest;

import campcloth.access.AuditTrail;
import campcloth.access.Mode;
import campcloth.figure.Range;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The audit log of a hosted service, for administrators. */
@RestController
@RequestMapping("/api/audit")
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
@Tag(name = "Audit log", description = "What was changed by whom; for administrators")
class AuditController {

    private static final int ON_A_PAGE = 100;
    private static final Range PAGE = new Range("page", 0, 100_000, "(counted from 0)");

    private final AuditTrail trail;

    AuditController(AuditTrail trail) {
        this.trail = trail;
    }

    @GetMapping
    @Operation(operationId = "readAuditLog", summary = "Lines of the audit log, newest first, a hundred on a page")
    List<AuditLine> lines(
            @Parameter(
                            description = "counted from 0",
                            schema = @Schema(type = "integer", minimum = "0", maximum = "100000", defaultValue = "0"))
                    @RequestParam(defaultValue = "0")
                    int page) {
        PAGE.check(page);
        return trail.latest(page, ON_A_PAGE).stream().map(AuditLine::of).toList();
    }
}
