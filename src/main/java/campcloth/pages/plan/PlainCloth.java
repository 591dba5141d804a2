package campcloth.pages.plan;

/**
 * What somebody who knows no cloths by name says a garment is made of. Each stands for a cloth of the catalogue that is usual for it;
 * which one is a choice of the project.
 */
public enum PlainCloth {
    LINEN("linen-plain-150"),
    LINEN_HEAVY("linen-plain-280"),
    COTTON("cotton-calico-150"),
    COTTON_HEAVY("cotton-canvas-350"),
    COTTON_BRUSHED("cotton-flannel-160"),
    WAXED("waxed-cotton-250"),
    WOOL_LIGHT("wool-tropical-170"),
    WOOL("wool-plain-280"),
    WOOL_HEAVY("wool-broadcloth-380"),
    WOOL_KNIT("wool-merino-jersey-200"),
    SILK("silk-noil-140"),
    POLYCOTTON("polycotton-65-35-145"),
    POLYESTER("polyester-plain-150"),
    FLEECE("polyester-fleece-200"),
    FAKE_FUR("fur-acrylic-500");

    private final String clothId;

    PlainCloth(String clothId) {
        this.clothId = clothId;
    }

    /** Id of the cloth that it stands for. */
    String clothId() {
        return clothId;
    }
}
