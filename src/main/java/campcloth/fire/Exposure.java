package campcloth.fire;

import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.fire.model.PointSource;
import java.util.Optional;

/**
 * A wearer's exposure to a fire. The class is the worst that role, distance and radiant flux give, each by itself.
 *
 * <p>By role: passing sparks, seated radiant heat or, from 3 m on, sparks as who passes; the rest contact. By distance: under 1 m contact (the 3 ft that youth
 * organisations keep between fire ring and people), under 3 m radiant heat (project choice), in the near field of
 * {@link PointSource} contact. By flux, with radiative fraction 0.40: under 1.6 kW/m2 sparks (about the limit for long work in
 * ordinary clothing: 1.5 kW/m2, report of the Dutch institute for physical safety, 2016), under 4 radiant heat (bare skin hurts
 * in 18 s), under 10 contact (hurts in 5 s), from 10 on unbearable; the last only where both distance and size or kind were
 * stated: nobody stays there, so it is never presumed.
 *
 * @param role what the wearer does there; {@link FireRole#NONE} is no exposure whatever the distance
 * @param distanceM from the fire's centre, m; empty where nobody said: then presumed near for the role
 * @param fireKw heat release, kW; empty where nobody said: then that of its kind, or presumed {@value #PRESUMED_KW} kW
 * @param kind what people call the fire; empty where nobody said
 */
public record Exposure(FireRole role, Optional<Double> distanceM, Optional<Double> fireKw, Optional<FireKind> kind) {

    /** A large fire in a ring: project choice, from about 30 kg of wood an hour at 13 MJ/kg (from memory). */
    public static final double PRESUMED_KW = 100;

    /** Ring about a fire that people keep out of, m: 3 ft in a youth organisation's fire sheet. */
    public static final double RING_M = 1;

    private static final double NEAR_M = 3;

    /** Where people sit at the nearest, m; who passes at a distance nobody told may pass as near. */
    private static final double NEAREST_SEAT_M = 1.5;

    private static final double LONG_STAY_KW_M2 = 1.6;
    private static final double SHORT_STAY_KW_M2 = 4;
    private static final double UNBEARABLE_KW_M2 = 10;
    private static final double HALF_INTENSITY_KW_M2 = 0.75;
    private static final double HEAT_EXPONENT = 1.5;
    private static final double PART_OF_ROLE = 0.15;

    public Exposure {
        OpenFire.check(distanceM, fireKw);
    }

    /** At a fire that nobody named. */
    public Exposure(FireRole role, Optional<Double> distanceM, Optional<Double> fireKw) {
        this(role, distanceM, fireKw, Optional.empty());
    }

    public static Exposure of(OpenFire fire) {
        return new Exposure(fire.role(), fire.distanceM(), fire.fireKw(), fire.kind());
    }

    /** No fire, or no place at one. */
    public static Exposure none() {
        return new Exposure(FireRole.NONE, Optional.empty(), Optional.empty());
    }

    /** The same role at the same fire, so far from its centre. */
    Exposure at(double metres) {
        return new Exposure(role, Optional.of(metres), fireKw, kind);
    }

    /** Heat release as given, or that of its kind, or the one presumed, kW. */
    public double fireKwOrPresumed() {
        return fireKw.or(() -> kind.map(FireKind::usualKw)).orElse(PRESUMED_KW);
    }

    /** Distance from the fire's centre, or the one presumed for the role, m: an unknown distance is a near one. */
    public double distanceOrPresumedM() {
        return distanceM.orElse(handsAtTheFire(role) ? RING_M : NEAREST_SEAT_M);
    }

    /** Whether the wearer stands so near that the point source does not hold and flames may reach. */
    public boolean inNearField() {
        if (role == FireRole.NONE) {
            return false;
        }
        boolean presumedAtTheFlame = distanceM.isEmpty() && roleClass() == ExposureClass.CONTACT;
        return presumedAtTheFlame || distanceOrPresumedM() < PointSource.nearFieldM(fireKwOrPresumed());
    }

    /** Radiant flux to show, kW/m2, radiative fraction 0.30; empty in the near field, without a distance or without a role. */
    public Optional<Double> fluxKwM2() {
        if (role == FireRole.NONE || inNearField()) {
            return Optional.empty();
        }
        return distanceM.map(m -> PointSource.fluxKwM2(PointSource.NOMINAL_FRACTION, fireKwOrPresumed(), m));
    }

    /** The same for a fire that radiates strongly, the fraction used for grading: 0.40. */
    public Optional<Double> strongFluxKwM2() {
        return fluxKwM2().map(usual -> usual / PointSource.NOMINAL_FRACTION * PointSource.GRADING_FRACTION);
    }

    /** What of the fire reaches the wearer. */
    public ExposureClass reach() {
        if (role == FireRole.NONE) {
            return ExposureClass.NONE;
        }
        ExposureClass byPlace = worse(roleClass(), distanceClass());
        return worse(inNearField() ? ExposureClass.CONTACT : ExposureClass.SPARKS, worse(byPlace, fluxClass()));
    }

    /**
     * How strong the exposure is, 0 to 1, for the order within a grade: a little by role, most by radiant heat; the latter reaches
     * half at 0.75 kW/m2, about half of what ordinary clothing bears for long, and falls with the cube of the distance far away
     * (project choice).
     */
    double intensity() {
        double byRole = role.ordinal() / (double) FireRole.CARRYING.ordinal();
        double heat = Math.pow(gradingFluxKwM2() / HALF_INTENSITY_KW_M2, HEAT_EXPONENT);
        return PART_OF_ROLE * byRole + (1 - PART_OF_ROLE) * heat / (1 + heat);
    }

    /** Whether the wearer has a place at a fire and can choose how far from it. */
    public boolean canKeepAway() {
        return role != FireRole.NONE && !handsAtTheFire(role);
    }

    /** Whether hands or sleeves come to the flame by what the wearer does, however far the rest of the body is. */
    static boolean handsAtTheFire(FireRole role) {
        return role.compareTo(FireRole.SEATED) > 0;
    }

    private ExposureClass roleClass() {
        return switch (role) {
            case NONE -> ExposureClass.NONE;
            case PASSING -> ExposureClass.SPARKS;
            case SEATED ->
                distanceM.filter(m -> m >= NEAR_M).isPresent() ? ExposureClass.SPARKS : ExposureClass.RADIANT;
            case COOKING, TENDING, CARRYING -> ExposureClass.CONTACT;
        };
    }

    private ExposureClass distanceClass() {
        double metres = distanceOrPresumedM();
        if (metres < RING_M) {
            return ExposureClass.CONTACT;
        }
        return metres < NEAR_M ? ExposureClass.RADIANT : ExposureClass.SPARKS;
    }

    private ExposureClass fluxClass() {
        double flux = gradingFluxKwM2();
        if (flux < LONG_STAY_KW_M2) {
            return ExposureClass.SPARKS;
        }
        if (flux < SHORT_STAY_KW_M2) {
            return ExposureClass.RADIANT;
        }
        boolean stated = distanceM.isPresent() && (fireKw.isPresent() || kind.isPresent());
        return flux < UNBEARABLE_KW_M2 || !stated ? ExposureClass.CONTACT : ExposureClass.UNBEARABLE;
    }

    /** The formula carried on into the near field, where it only ranks; at the ring where the role means contact. */
    private double gradingFluxKwM2() {
        if (role == FireRole.NONE) {
            return 0;
        }
        return PointSource.fluxKwM2(PointSource.GRADING_FRACTION, fireKwOrPresumed(), distanceOrPresumedM());
    }

    private static ExposureClass worse(ExposureClass one, ExposureClass other) {
        return one.atLeast(other) ? one : other;
    }
}
