package campcloth.comfort.model;

/**
 * A two-node body in its place as it goes on from minute to minute, by the equations of {@link TwoNode}. It changes where it stands
 * and makes nothing new in between, for an hour is asked for many thousand times.
 */
final class Minutes {

    private final TwoNode place;
    private double skinC;
    private double coreC;
    private double skinShare;
    private double bloodFlow;
    private double metabolicWm2;
    private double breathWm2;
    private double dryWm2;
    private double skinStorageWm2;
    private double coreStorageWm2;
    private double sweatCall;
    private double evaporationWm2;
    private double sweatGM2H;
    private double wettedness;
    private double wettednessAsked;
    private double clothingC;
    private double radiativeWm2K;

    Minutes(TwoNode place, Body from) {
        this.place = place;
        skinC = from.skinC();
        coreC = from.coreC();
        skinShare = from.skinShare();
        bloodFlow = from.bloodFlowLM2H();
        metabolicWm2 = from.metabolicWm2();
        breathWm2 = from.breathWm2();
        dryWm2 = from.dryWm2();
        skinStorageWm2 = from.skinStorageWm2();
        coreStorageWm2 = from.coreStorageWm2();
        sweatCall = from.sweatCallGM2H();
        evaporationWm2 = from.evaporationWm2();
        sweatGM2H = from.sweatGM2H();
        wettedness = from.wettedness();
        wettednessAsked = from.wettednessAsked();
        clothingC = from.clothingC();
        radiativeWm2K = from.radiativeWm2K();
    }

    /** One minute more. */
    void pass() {
        settleClothing();
        double toSkin = (coreC - skinC) * (5.28 + 1.163 * bloodFlow);
        breathWm2 = place.breathWm2;
        skinStorageWm2 = toSkin - dryWm2 - evaporationWm2;
        coreStorageWm2 = metabolicWm2 - toSkin - breathWm2;
        skinC += skinStorageWm2 / (TwoNode.CAPACITY_WHM2K * skinShare * 60);
        coreC += coreStorageWm2 / (TwoNode.CAPACITY_WHM2K * (1 - skinShare) * 60);
        sweatCall = place.sweatCallGM2H(skinShare, skinC, coreC);
        bloodFlow = place.bloodFlowLM2H(skinC, coreC);
        skinShare = 0.0417737 + 0.7451833 / (bloodFlow + 0.585417);
        metabolicWm2 = place.metabolicWm2(skinC, coreC);
        Evaporation evaporation = place.evaporation(sweatCall, skinC);
        evaporationWm2 = evaporation.wm2();
        sweatGM2H = evaporation.sweatGM2H();
        wettedness = evaporation.wettedness();
        wettednessAsked = evaporation.asked();
    }

    /** Surface temperature of the clothing, by substitution until it stands still, and the dry heat loss through it. */
    private void settleClothing() {
        double insulation = place.insulationM2KW;
        double surface = clothingC;
        double airLayer;
        double operative;
        double before;
        do {
            before = surface;
            double meanK = (surface + place.radiantC) / 2 + 273.15;
            radiativeWm2K = 4 * 0.95 * 5.67e-8 * meanK * meanK * meanK * place.radiatingShare;
            double total = radiativeWm2K + place.convectiveWm2K;
            airLayer = 1 / (place.areaFactor * total);
            operative = (radiativeWm2K * place.radiantC + place.convectiveWm2K * place.airC) / total;
            surface = (airLayer * skinC + insulation * operative) / (airLayer + insulation);
        } while (Math.abs(surface - before) > 1e-6);
        clothingC = surface;
        dryWm2 = (skinC - operative) / (airLayer + insulation);
    }

    /** The body as it is now. */
    Body body() {
        return new Body(
                skinC,
                coreC,
                skinShare,
                bloodFlow,
                metabolicWm2,
                breathWm2,
                dryWm2,
                evaporationWm2,
                skinStorageWm2,
                coreStorageWm2,
                sweatCall,
                sweatGM2H,
                wettedness,
                wettednessAsked,
                clothingC,
                radiativeWm2K);
    }
}
