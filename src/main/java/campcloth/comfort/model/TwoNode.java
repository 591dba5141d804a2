package campcloth.comfort.model;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Gagge's two-node model of the body, a core within a skin, minute by minute (Gagge, Fobelets and Berglund 1986, the model
 * behind SET in ASHRAE 55; constants read second-hand and confirmed by the published rows). External work is 0. Starts
 * neutral: skin 33.7, core 36.8 degrees Celsius. The clothing goes in as it is worn, wind and walking already in its insulation
 * and its vapour resistance; the model adds its own air layer.
 *
 * <p>Used here for air 0..45 degrees Celsius, relative air speed up to 5 m/s (below 0.1 it calculates with 0.1), 0.8..5 met and
 * 0..4 clo (project choice). The published rows end at 3 m/s. To 5 m/s the air layer is carried on because convection about a
 * manikin was measured so far (de Dear et al. 1997, abstract): it grows there as it does here, with about the square root of the
 * wind. That fit, 10.4 v^0.56 (from memory), lies a fifth above ours, so between 3 and 5 m/s the air layer is rather too warm; of
 * a clothed body's insulation it is the smaller part. Made for an hour in a room: outdoors it is an
 * approximation. An average adult; not rain, not wet clothing.
 *
 * <p>Where the skin becomes as wet as it can, the model as published evaporates a little more than just below that point (its
 * sweating share is w_max / 0.94): there the skin may swing by some tenths of a degree from minute to minute.
 */
public final class TwoNode {

    public static final String MODEL = "two-node model, Gagge, Fobelets and Berglund 1986";

    static final double WM2_PER_MET = 58.2;

    private static final Range AIR = new Range("air temperature", 0, 45, "degrees Celsius");
    private static final Range SPEED = new Range("relative air speed", 0, 5, "m/s");
    private static final Range MET = new Range("metabolic rate", 0.8, 5, "met");
    private static final Range CLO = new Range("clothing insulation as worn", 0, 4, "clo");

    private static final double CALMEST_MS = 0.1;
    static final double NEUTRAL_SKIN_C = 33.7;
    static final double NEUTRAL_CORE_C = 36.8;
    static final double NEUTRAL_SKIN_SHARE = 0.1;
    static final double NEUTRAL_BODY_C = bodyC(NEUTRAL_SKIN_SHARE, NEUTRAL_SKIN_C, NEUTRAL_CORE_C);
    static final double NEUTRAL_BLOOD_FLOW = 6.3;
    private static final double MOST_BLOOD_FLOW = 90;
    private static final double MOST_SWEAT_GM2H = 500;

    /** Heat to warm the whole body by 1 K, W h/(m2 K): 0.97 W h/(kg K) * 70 kg / 1.8258 m2. */
    static final double CAPACITY_WHM2K = 0.97 * 70 / 1.8258;

    private final double met;
    final double airC;
    final double radiantC;
    final double insulationM2KW;
    private final double mostBloodFlow;
    private final double mostSweat;
    private final double neutralCoreC;
    private final double neutralBodyC;
    final double breathWm2;
    final double radiatingShare;
    private final double vapourKpa;
    final double areaFactor;
    final double convectiveWm2K;
    private final double vapourBarrierM2KpaW;
    private final double wettest;

    /**
     * @param met metabolic rate, met
     * @param seated whether the body sits (less of it radiates) or stands
     * @throws IllegalArgumentException outside the range of the model; ask {@link #outside} first
     */
    public TwoNode(Air air, double met, Worn worn, boolean seated) {
        this(air, met, worn, seated, HeatHabit.NONE);
    }

    /** Of a body that is so far used to heat. */
    public TwoNode(Air air, double met, Worn worn, boolean seated, HeatHabit habit) {
        this(air, met, worn, seated, habit, MOST_BLOOD_FLOW, MOST_SWEAT_GM2H);
    }

    /** Of a body whose skin blood flow, l/(m2 h), and sweating, g/(m2 h) before it is used to heat, go no further than that. */
    TwoNode(Air air, double met, Worn worn, boolean seated, HeatHabit habit, double mostBloodFlow, double mostSweat) {
        outside(air, met, worn).ifPresent(passed -> {
            throw new IllegalArgumentException(passed.because());
        });
        double speed = Math.max(CALMEST_MS, air.speedMs());
        this.met = met;
        this.airC = air.airC();
        this.radiantC = air.radiantC();
        this.insulationM2KW = worn.insulationM2KW();
        this.mostBloodFlow = mostBloodFlow;
        this.mostSweat = habit.mostSweat(mostSweat);
        this.neutralCoreC = habit.neutralCoreC();
        this.neutralBodyC = bodyC(NEUTRAL_SKIN_SHARE, NEUTRAL_SKIN_C, neutralCoreC);
        this.radiatingShare = seated ? 0.70 : 0.73;
        this.vapourKpa = air.vapourKpa();
        this.breathWm2 = breathWm2(met * WM2_PER_MET, airC, vapourKpa);
        this.areaFactor = 1 + 0.15 * worn.clo();
        this.convectiveWm2K =
                Math.max(StandardEnvironment.ownConvection(met), Math.max(3.0, 8.600001 * Math.pow(speed, 0.53)));
        this.vapourBarrierM2KpaW = 1 / (Worn.LEWIS_K_KPA * areaFactor * convectiveWm2K) + worn.vapourResistanceM2KpaW();
        this.wettest = habit.wettest(worn.clo() > 0 ? 0.59 * Math.pow(speed, -0.08) : 0.38 * Math.pow(speed, -0.29));
    }

    public static Optional<OutOfRange> outside(Air air, double met, Worn worn) {
        return Limit.firstPassed(
                MODEL,
                new Limit(AIR, air.airC()),
                new Limit(SPEED, air.speedMs()),
                new Limit(MET, met),
                new Limit(CLO, worn.clo()));
    }

    /** Mean temperature of a body, degrees Celsius. */
    static double bodyC(double skinShare, double skinC, double coreC) {
        return skinShare * skinC + (1 - skinShare) * coreC;
    }

    /** Greatest share of the skin that can be wet, w_max: beyond it sweat drips off and cools no more. */
    public double wettest() {
        return wettest;
    }

    /** The body after that many minutes, from neutral. */
    public Body after(int minutes) {
        return after(start(), minutes);
    }

    /** The body that many minutes later. */
    public Body after(Body before, int minutes) {
        Minutes body = new Minutes(this, before);
        for (int minute = 0; minute < minutes; minute++) {
            body.pass();
        }
        return body.body();
    }

    /**
     * The body as it comes in here from other surroundings, work or clothing: its temperatures, blood flow and sweating go on,
     * its heat flows are those of this place. No minute has passed, so nothing is stored yet.
     */
    public Body entered(State state) {
        Evaporation evaporation = evaporation(state.sweatCallGM2H(), state.skinC());
        return new Body(
                state.skinC(),
                state.coreC(),
                state.skinShare(),
                state.bloodFlowLM2H(),
                metabolicWm2(state.skinC(), state.coreC()),
                0,
                0,
                evaporation.wm2(),
                0,
                0,
                state.sweatCallGM2H(),
                evaporation.sweatGM2H(),
                evaporation.wettedness(),
                evaporation.asked(),
                (state.skinC() + airC) / 2,
                4.7);
    }

    /** The neutral body as the published model starts it, with 0.1 W/m2 a met of evaporation in its first minute. */
    public Body start() {
        double metabolic = met * WM2_PER_MET;
        return new Body(
                NEUTRAL_SKIN_C,
                neutralCoreC,
                NEUTRAL_SKIN_SHARE,
                NEUTRAL_BLOOD_FLOW,
                metabolic,
                0,
                0,
                0.1 * met,
                0,
                0,
                0,
                0,
                0.06,
                0.06,
                (NEUTRAL_SKIN_C + airC) / 2,
                4.7);
    }

    /** The body one minute later. */
    public Body minuteAfter(Body body) {
        return after(body, 1);
    }

    /** Skin blood flow, l/(m2 h): cold skin narrows it, a warm core widens it. */
    double bloodFlowLM2H(double skinC, double coreC) {
        double coldSkin = Math.max(0, NEUTRAL_SKIN_C - skinC);
        double warmCore = Math.max(0, coreC - neutralCoreC);
        double bloodFlow = (NEUTRAL_BLOOD_FLOW + 120 * warmCore) / (1 + 0.5 * coldSkin);
        return Math.max(0.5, Math.min(mostBloodFlow, bloodFlow));
    }

    /** Sweat that is called for, g/(m2 h). */
    double sweatCallGM2H(double skinShare, double skinC, double coreC) {
        return Math.min(mostSweat, Evaporation.sweatCallGM2H(skinShare, skinC, coreC, neutralBodyC));
    }

    /** Heat made by work and by shivering, 19.4 W/m2 for each K that the skin and each K that the core is too cold. */
    double metabolicWm2(double skinC, double coreC) {
        return met * WM2_PER_MET + 19.4 * Math.max(0, NEUTRAL_SKIN_C - skinC) * Math.max(0, neutralCoreC - coreC);
    }

    /** E_res + C_res; 44 mmHg is the vapour pressure in the lungs. */
    private static double breathWm2(double metabolicWm2, double airC, double vapourKpa) {
        return 0.0023 * metabolicWm2 * (44 - vapourKpa * Vapour.MMHG_PER_KPA) + 0.0014 * metabolicWm2 * (34 - airC);
    }

    /** Dry loss from the surface of the clothing to air and surroundings; equals what passes through the clothing. */
    double surfaceLossWm2(Body body) {
        return areaFactor
                * (body.radiativeWm2K() * (body.clothingC() - radiantC) + convectiveWm2K * (body.clothingC() - airC));
    }

    /** Through clothing and air layer. */
    Evaporation evaporation(double sweatCallGM2H, double skinC) {
        double most = (Vapour.saturationKpa(skinC) - vapourKpa) / vapourBarrierM2KpaW;
        return Evaporation.of(sweatCallGM2H, most, wettest);
    }

    /** SET, the temperature of a still room in which a person in the standard clothing would lose as much: degrees Celsius. */
    public double standardEffectiveC(Body body) {
        return StandardEnvironment.temperatureC(met, body);
    }
}
