package campcloth.pages.cloths;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import org.jspecify.annotations.Nullable;

/** The figures of a cloth as numbers in a form; empty where there is none. */
public final class TypedFigures {

    @TypedIn(Units.Measure.WEIGHT_GSM)
    public @Nullable Double weightGsm;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double widthCm;

    public @Nullable Double thicknessMm;
    public @Nullable Double airPermeabilityMmS;
    public @Nullable Double vapourResistanceM2PaW;
    public @Nullable Double shrinkWarpPercent;
    public @Nullable Double shrinkWeftPercent;
    public @Nullable Double fibreDiameterUm;
    public @Nullable Double fibreDiameterCvPercent;

    @TypedIn(Units.Measure.PRICE_PER_METRE)
    public @Nullable Double pricePerMetre;

    static TypedFigures of(Cloth cloth) {
        TypedFigures figures = new TypedFigures();
        for (Property property : Property.values()) {
            figures.set(property, cloth.figure(property).map(Figure::value).orElse(null));
        }
        return figures;
    }

    @Nullable
    Double get(Property property) {
        return switch (property) {
            case WEIGHT_GSM -> weightGsm;
            case WIDTH_CM -> widthCm;
            case THICKNESS_MM -> thicknessMm;
            case AIR_PERMEABILITY_MM_S -> airPermeabilityMmS;
            case VAPOUR_RESISTANCE_M2PA_W -> vapourResistanceM2PaW;
            case SHRINK_WARP_PERCENT -> shrinkWarpPercent;
            case SHRINK_WEFT_PERCENT -> shrinkWeftPercent;
            case FIBRE_DIAMETER_UM -> fibreDiameterUm;
            case FIBRE_DIAMETER_CV_PERCENT -> fibreDiameterCvPercent;
            case PRICE_PER_METRE -> pricePerMetre;
        };
    }

    void set(Property property, @Nullable Double value) {
        switch (property) {
            case WEIGHT_GSM -> weightGsm = value;
            case WIDTH_CM -> widthCm = value;
            case THICKNESS_MM -> thicknessMm = value;
            case AIR_PERMEABILITY_MM_S -> airPermeabilityMmS = value;
            case VAPOUR_RESISTANCE_M2PA_W -> vapourResistanceM2PaW = value;
            case SHRINK_WARP_PERCENT -> shrinkWarpPercent = value;
            case SHRINK_WEFT_PERCENT -> shrinkWeftPercent = value;
            case FIBRE_DIAMETER_UM -> fibreDiameterUm = value;
            case FIBRE_DIAMETER_CV_PERCENT -> fibreDiameterCvPercent = value;
            case PRICE_PER_METRE -> pricePerMetre = value;
        }
    }
}
