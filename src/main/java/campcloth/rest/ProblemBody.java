package campcloth.rest;

import campcloth.fire.Boundary;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A problem as it is served: the document's description of what {@link Problems} makes. */
@Schema(
        name = "Problem",
        additionalProperties = Schema.AdditionalPropertiesValue.TRUE,
        description =
                "RFC 9457. A label that was not read adds from, to, place and readings: where, and what it might mean.")
record ProblemBody(
        @Schema(
                description = "which problem; about:blank where it is left out",
                example = "urn:campcloth:problem:refused")
        @Nullable
        String type,

        String title,
        int status,
        String detail,

        @Schema(description = "the address that was called") @Nullable
        String instance,

        @Schema(description = "what is wrong with which field") @Nullable
        List<FieldError> errors,

        @Schema(
                description =
                        "which kind of clothing is outside what we advise on; with the type urn:campcloth:problem:outside")
        @Nullable
        Boundary boundary,

        @Schema(description = "whom to ask instead, beside a boundary", example = "[\"a licensed pyrotechnician\"]")
        @Nullable
        List<String> ask,

        @Schema(description = "deference and first aid, beside a boundary") @Nullable
        List<String> cautions) {}
