package campcloth.rest;

import campcloth.supply.ListDesk;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;

/** What a supplier's list is sent with in its address, the same whether its end is waited for or it is handed in as a job. */
record ListQuery(
        @Parameter(
                description = "who sells by the list; part of the key of each article",
                example = "Wendlow Mill",
                required = true)
        @Nullable
        String supplier,

        @Parameter(
                description = "what a row that cannot be used does to the others",
                schema = @Schema(allowableValues = {"REFUSE_ALL", "SKIP"}, defaultValue = "REFUSE_ALL"))
        @Nullable
        OnBadRow onBadRow,

        @Parameter(description = "whether to report only", schema = @Schema(type = "boolean", defaultValue = "false")) @Nullable
        Boolean dryRun,

        @Parameter(description = "currency of prices whose head and cell name none, as EUR") @Nullable
        String currency,

        @Parameter(description = "comma, semicolon or tab; recognised where it is left out") @Nullable
        String delimiter) {

    static final String CSV = "text/csv";

    ListOrder how() throws MissingServletRequestParameterException {
        if (supplier == null) {
            throw new MissingServletRequestParameterException("supplier", "String");
        }
        return new ListOrder(
                supplier,
                Optional.ofNullable(currency),
                Optional.ofNullable(delimiter).map(ListQuery::sign));
    }

    OnBadRow badRows() {
        return onBadRow == null ? OnBadRow.REFUSE_ALL : onBadRow;
    }

    boolean isDryRun() {
        return dryRun != null && dryRun;
    }

    /** Takes the list out of the body. */
    static void spool(HttpServletRequest request, Spool spool) throws IOException, HttpMediaTypeNotSupportedException {
        utf8(MediaType.parseMediaType(String.valueOf(request.getContentType())));
        if (!spool.take(request.getInputStream(), ListDesk.MOST_BYTES)) {
            throw TooLarge.list();
        }
    }

    private static void utf8(MediaType type) throws HttpMediaTypeNotSupportedException {
        if (type.getCharset() != null && !StandardCharsets.UTF_8.equals(type.getCharset())) {
            throw new HttpMediaTypeNotSupportedException(type, List.of(MediaType.valueOf(CSV + ";charset=UTF-8")));
        }
    }

    private static char sign(String written) {
        return switch (written.toLowerCase(Locale.ROOT)) {
            case "comma" -> ',';
            case "semicolon" -> ';';
            case "tab" -> '\t';
            default -> written.length() == 1 ? written.charAt(0) : '?';
        };
    }
}
