package campcloth.garment.design;

import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.SewnCloth;
import java.util.ArrayList;
import java.util.List;

/**
 * The hems of a garment of the upper body.
 *
 * @param body at the lower edge; as deep as its most flared panel lets it
 * @param cuff at the sleeves' ends, also reckoned where a band takes their place
 * @param all those that are sewn
 */
record BodyHems(Hem body, Hem cuff, List<Hem> all) {

    static BodyHems of(BodySizes sizes, BodyChoice choice, SewnCloth cloth) {
        Hem body = HemRules.hem(body(sizes, choice), cloth);
        Hem cuff = HemRules.hem(cuff(sizes, choice), cloth);
        List<Hem> all = new ArrayList<>();
        all.add(body);
        if (choice.bandCm() == 0) {
            all.add(cuff);
        }
        all.add(HemRules.hem(choice.neck().hemEdge(), cloth));
        if (choice.splitCm() > 0) {
            all.add(HemRules.hem(
                    slit(HemEdge.Kind.SIDE_SPLIT, 4 * choice.splitCm(), sizes.chestCm() / 2, choice.seamCm()), cloth));
        }
        if (choice.bandCm() > 0) {
            all.add(HemRules.hem(
                    slit(HemEdge.Kind.WRIST_SLIT, 4 * choice.wristSlitCm(), sizes.sleeveTopWidthCm(), choice.seamCm()),
                    cloth));
        }
        return new BodyHems(body, cuff, List.copyOf(all));
    }

    private static HemEdge body(BodySizes sizes, BodyChoice choice) {
        double halfCm = sizes.chestCm() / 2 + 2 * choice.flareCm();
        double tangent = choice.flareCm() / (sizes.lengthCm() - sizes.armholeCm());
        Gores gores = choice.gores();
        boolean goreDecides = gores.any() && gores.tangent() * halfCm > tangent * gores.widthCm();
        return new HemEdge(
                HemEdge.Kind.BODY,
                choice.sweepCm(sizes),
                choice.hangsCm(sizes),
                goreDecides ? gores.widthCm() : halfCm,
                goreDecides ? gores.tangent() : tangent,
                choice.hemCm());
    }

    private static HemEdge cuff(BodySizes sizes, BodyChoice choice) {
        return new HemEdge(
                HemEdge.Kind.CUFF,
                2 * sizes.cuffWidthCm(),
                sizes.sleeveLengthCm(),
                sizes.cuffWidthCm(),
                0,
                choice.cuffCm());
    }

    /** An opening left in a seam: the seam's own allowance is folded. */
    private static HemEdge slit(HemEdge.Kind kind, double edgeCm, double panelCm, double seamCm) {
        double leftCm = Math.min(seamCm, kind.usualAllowanceCm());
        return new HemEdge(kind, edgeCm, 0, panelCm, 0, leftCm);
    }
}
