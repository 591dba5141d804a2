package campcloth.plan;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.garment.SewnCloth;
import java.util.Optional;

/**
 * The cloth to cut from, as the shop sells it.
 *
 * @param name how people call it, may be empty
 * @param widthCm from selvedge to selvedge, selvedges included
 * @param selvedgeCm width of each selvedge, left out of the layout
 * @param shrinkWarpPercent in washing, along the cloth; positive where it becomes shorter; measured after one wash or several
 * @param shrinkWeftPercent the same across
 * @param weightGsm mass per area
 * @param thicknessMm thickness, where known; else reckoned from the weight at {@value #USUAL_BULK_G_CM3} g/cm3
 * @param surface plain or raised
 * @param weave how it is bound, where known
 * @param finish what was done to it, where known
 * @param mainFibre key of the fibre with the greatest share, where known
 * @param nap whether all pieces must lie the same way up
 * @param stretch whether it stretches
 * @param prewash whether it is to be washed before it is cut; without meaning for waxed and coated cloth
 * @param price what a metre costs, where known
 */
public record ClothToCut(
        String name,
        double widthCm,
        double selvedgeCm,
        Figure shrinkWarpPercent,
        Figure shrinkWeftPercent,
        double weightGsm,
        Optional<Double> thicknessMm,
        Surface surface,
        Optional<Weave> weave,
        Optional<Finish> finish,
        Optional<String> mainFibre,
        boolean nap,
        boolean stretch,
        boolean prewash,
        Optional<Money> price) {

    /** Bulk density of plain dress-weight cloth; project choice within the usual 0.3 to 0.5 (from memory). */
    static final double USUAL_BULK_G_CM3 = 0.4;

    private static final Range SELVEDGE = new Range("selvedgeCm", 0, 10, "cm");
    private static final double LEAST_USABLE_CM = 1;

    public ClothToCut {
        Property.WIDTH_CM.range().check(widthCm);
        SELVEDGE.check(selvedgeCm);
        checkWhole(Property.SHRINK_WARP_PERCENT, shrinkWarpPercent);
        checkWhole(Property.SHRINK_WEFT_PERCENT, shrinkWeftPercent);
        Property.WEIGHT_GSM.range().check(weightGsm);
        thicknessMm.ifPresent(Property.THICKNESS_MM.range()::check);
        price.ifPresent(money -> Property.PRICE_PER_METRE.range().check(money.amount()));
        if (widthCm - 2 * selvedgeCm < LEAST_USABLE_CM) {
            throw Refused.of("selvedgeCm", "leaves nothing between the selvedges", "give a narrower selvedge");
        }
    }

    /** The facts that cannot be left out; everything else as usual: plain, no nap, selvedges of 1 cm, no price. */
    public static ClothToCut plain(
            double widthCm, double shrinkWarpPercent, double shrinkWeftPercent, double weightGsm, boolean prewash) {
        return new ClothToCut(
                "",
                widthCm,
                1,
                declared(shrinkWarpPercent),
                declared(shrinkWeftPercent),
                weightGsm,
                Optional.empty(),
                Surface.PLAIN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                prewash,
                Optional.empty());
    }

    /** A cloth as it is known, with estimates for what is not. */
    public static ClothToCut of(Cloth known, double selvedgeCm, boolean prewash) {
        Cloth cloth = Estimates.complete(known);
        return new ClothToCut(
                cloth.name(),
                cloth.required(Property.WIDTH_CM).value(),
                selvedgeCm,
                cloth.required(Property.SHRINK_WARP_PERCENT),
                cloth.required(Property.SHRINK_WEFT_PERCENT),
                cloth.required(Property.WEIGHT_GSM).value(),
                cloth.figure(Property.THICKNESS_MM).map(Figure::value),
                cloth.surface(),
                Optional.of(cloth.weave()),
                Optional.of(cloth.finish()),
                Optional.of(cloth.mainFibre()),
                cloth.nap(),
                cloth.stretch(),
                prewash,
                cloth.figure(Property.PRICE_PER_METRE).map(price -> new Money(price.value(), "EUR")));
    }

    private static Figure declared(double percent) {
        if (!Double.isFinite(percent)) {
            throw Refused.of("shrinkPercent", "is not a finite number", "give a percentage such as 5");
        }
        return Figure.exact(percent, Basis.DECLARED, "stated with the order");
    }

    private static void checkWhole(Property property, Figure figure) {
        property.range().check(figure.value());
        property.range().check(figure.low());
        property.range().check(figure.high());
    }

    /** The same cloth at a price. */
    public ClothToCut at(Money perMetre) {
        return with(shrinkWarpPercent, shrinkWeftPercent, prewash, Optional.of(perMetre));
    }

    /** The same cloth should it shrink as much as its figures allow. */
    ClothToCut shrinkingMost() {
        return with(mostOf(shrinkWarpPercent), mostOf(shrinkWeftPercent), prewash, price);
    }

    private static Figure mostOf(Figure figure) {
        return Figure.exact(figure.high(), figure.basis(), figure.source());
    }

    private ClothToCut with(Figure warp, Figure weft, boolean washedFirst, Optional<Money> perMetre) {
        return new ClothToCut(
                name,
                widthCm,
                selvedgeCm,
                warp,
                weft,
                weightGsm,
                thicknessMm,
                surface,
                weave,
                finish,
                mainFibre,
                nap,
                stretch,
                washedFirst,
                perMetre);
    }

    /** Waxed and coated cloth is never washed, so nothing is reckoned for shrinkage. */
    public boolean isNeverWashed() {
        return finish.filter(Finish::closesPores).isPresent();
    }

    /** Whether it is washed before it is cut, as asked for and as its finish allows. */
    public boolean isWashedFirst() {
        return prewash && !isNeverWashed();
    }

    /** How to wash it before it is cut, in sentences; common practice, no source. */
    public String washing() {
        return WashingAdvice.sentence(this);
    }

    /** Whether the figures of shrinkage matter and have any spread. */
    boolean shrinkageIsUncertain() {
        return !isNeverWashed()
                && (shrinkWarpPercent.high() > shrinkWarpPercent.value()
                        || shrinkWeftPercent.high() > shrinkWeftPercent.value());
    }

    /** The same cloth cut as it comes, the garment washed afterwards. */
    ClothToCut washedAfterwards() {
        return with(shrinkWarpPercent, shrinkWeftPercent, false, price);
    }

    double nominalWidthCm() {
        return widthCm - 2 * selvedgeCm;
    }

    /** Width of the cloth as it is cut: (width - selvedges) (1 - weft shrinkage) where it is washed first. */
    public double usableWidthCm() {
        return usableWidthOfCm(widthCm);
    }

    /** The same of another width of this cloth, selvedges included; 0 where nothing is left between them. */
    double usableWidthOfCm(double otherWidthCm) {
        double betweenCm = Math.max(0, otherWidthCm - 2 * selvedgeCm);
        return isWashedFirst() ? betweenCm * (1 - shrinkWeftPercent.value() / 100) : betweenCm;
    }

    /** Narrowest cloth, selvedges included, that has the usable width given. */
    double widthForUsableCm(double usableCm) {
        return (isWashedFirst() ? usableCm / (1 - shrinkWeftPercent.value() / 100) : usableCm) + 2 * selvedgeCm;
    }

    /** Length as bought for a length as cut: L / (1 - warp shrinkage) where it is washed first. */
    double boughtLengthCm(double cutLengthCm) {
        return isWashedFirst() ? cutLengthCm / (1 - shrinkWarpPercent.value() / 100) : cutLengthCm;
    }

    /** Length as cut of a length as bought. */
    double cutLengthCm(double boughtLengthCm) {
        return isWashedFirst() ? boughtLengthCm * (1 - shrinkWarpPercent.value() / 100) : boughtLengthCm;
    }

    double thicknessOrUsualMm() {
        return thicknessMm.orElse(weightGsm / (1000 * USUAL_BULK_G_CM3));
    }

    /** What sewing must know of it; shrinkage is still to come only where it is washed after cutting. */
    public SewnCloth sewn() {
        boolean washedLater = !prewash && !isNeverWashed();
        return new SewnCloth(
                weightGsm,
                thicknessOrUsualMm(),
                surface,
                weave,
                finish,
                mainFibre,
                washedLater ? shrinkWarpPercent.value() : 0,
                washedLater ? shrinkWeftPercent.value() : 0,
                usableWidthCm());
    }
}
