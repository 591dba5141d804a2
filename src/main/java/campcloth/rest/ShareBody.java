package campcloth.rest;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.ArrayList;
import java.util.List;

/** One fibre's share of a blend. */
@Schema(name = "Share")
record ShareBody(
        @Schema(example = "flax", description = "generic name in lower case, or other, or unknown") @NotNull
        String fibre,

        @Schema(example = "70.0", description = "percent of mass") @NotNull
        Double percent) {

    static List<ShareBody> of(Blend blend) {
        return blend.shares().stream()
                .map(share -> new ShareBody(share.fibre().key(), share.percent()))
                .toList();
    }

    /** The blend; refuses fibres that are not known and sums other than 100. */
    static Blend blend(List<ShareBody> shares, Fibres fibres) {
        List<Blend.Share> read = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            ShareBody share = shares.get(i);
            read.add(Refused.within(
                    "blend[" + i + "]", () -> new Blend.Share(fibres.require(share.fibre()), share.percent())));
        }
        return new Blend(read);
    }
}
