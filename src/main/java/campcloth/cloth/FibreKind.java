package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Figure;
import java.util.Set;

/**
 * What a fibre is for touch, fineness and shrinkage. Finer than {@link FibreFamily}, which speaks of heat only. A fibre is
 * told by its generic name; names not listed fall back on the family, and plant fibre of a high modulus counts as bast.
 */
enum FibreKind {
    COTTON,
    /** Flax, hemp, ramie, jute and the other stiff plant fibres. */
    BAST,
    /** Viscose, modal, lyocell, cupro and other fibres regenerated from cellulose or protein. */
    REGENERATED,
    SILK,
    /** Wool and the other animal hairs. */
    HAIR,
    /** Cellulose acetates. */
    ACETATE,
    /** Elastane, rubber and the other fibres that stretch and spring back. */
    ELASTIC,
    /** The other fibres spun from a melt or solution. */
    SYNTHETIC,
    MINERAL,
    UNNAMED;

    private static final Set<String> BAST_NAMES = Set.of(
            "flax",
            "linen",
            "hemp",
            "true hemp",
            "ramie",
            "jute",
            "nettle",
            "abaca",
            "sisal",
            "henequen",
            "maguey",
            "sunn",
            "coir",
            "alfa",
            "broom");
    private static final Set<String> SOFT_NAMES = Set.of("cotton", "kapok");
    private static final Set<String> REGENERATED_NAMES =
            Set.of("viscose", "modal", "lyocell", "cupro", "protein", "alginate");
    private static final Set<String> ACETATE_NAMES = Set.of("acetate", "triacetate");
    private static final Set<String> ELASTIC_NAMES =
            Set.of("elastane", "elastodiene", "elastolefin", "elastomultiester");
    /** No regenerated cellulose and no cotton is as stiff, GPa. */
    private static final double BAST_MODULUS_GPA = 20;

    static FibreKind of(Fibre fibre) {
        String key = fibre.key();
        if (BAST_NAMES.contains(key)) {
            return BAST;
        }
        if (SOFT_NAMES.contains(key)) {
            return COTTON;
        }
        if (REGENERATED_NAMES.contains(key)) {
            return REGENERATED;
        }
        if (ACETATE_NAMES.contains(key)) {
            return ACETATE;
        }
        return ELASTIC_NAMES.contains(key) ? ELASTIC : ofFamily(fibre);
    }

    /** Share of the blend, percent of mass. */
    static double percentIn(Blend blend, FibreKind kind) {
        return blend.shares().stream()
                .filter(share -> of(share.fibre()) == kind)
                .mapToDouble(Blend.Share::percent)
                .sum();
    }

    boolean isHeatSetSynthetic() {
        return this == SYNTHETIC || this == ACETATE;
    }

    private static FibreKind ofFamily(Fibre fibre) {
        return switch (fibre.family()) {
            case CELLULOSIC -> stiff(fibre) ? BAST : REGENERATED;
            case PROTEIN -> fibre.key().equals("silk") ? SILK : HAIR;
            case MELTABLE, FLAME_RESISTANT -> SYNTHETIC;
            case MINERAL -> MINERAL;
            case UNNAMED -> UNNAMED;
        };
    }

    private static boolean stiff(Fibre fibre) {
        return fibre.modulusGPa().map(Figure::value).orElse(0.0) >= BAST_MODULUS_GPA;
    }
}
