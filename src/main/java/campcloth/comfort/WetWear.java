package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.WetLoss;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.WetClothing;
import campcloth.comfort.model.WetClothing.Wetting;
import campcloth.comfort.model.Worn;
import campcloth.event.Wetness;
import java.util.Optional;

/**
 * Clothing as it insulates where somebody said that it is wet, {@link WetClothing}; as it is where nobody did. Heat is judged as
 * though it were dry: that drying cools is not credited.
 *
 * @param worn the clothing, what water takes away already off
 * @param loss what that is; empty where the clothing is dry
 */
record WetWear(ThreeWorn worn, Optional<WetLoss> loss) {

    /** Best value, mildest and worst: losses from memory, wet surface a choice of the project. */
    private record Wettings(Wetting mild, Wetting usual, Wetting worst) {

        static Wettings of(Wetness wetness) {
            return switch (wetness) {
                case DRY -> throw new IllegalArgumentException("dry");
                case DAMP -> new Wettings(new Wetting(0.05, 0.05), new Wetting(0.1, 0.15), new Wetting(0.2, 0.3));
                case WET -> new Wettings(new Wetting(0.15, 0.3), new Wetting(0.3, 0.6), new Wetting(0.5, 1));
            };
        }
    }

    static WetWear of(Physics spell, ThreeWorn dry) {
        return wetting(spell.needs())
                .map(wetness -> wet(spell, dry, Wettings.of(wetness)))
                .orElseGet(() -> new WetWear(dry, Optional.empty()));
    }

    /** The best value alone. */
    static Worn usual(SpellNeeds needs, Worn dry) {
        return wetting(needs)
                .map(wetness -> as(dry, new DirectPhysics(needs).wet(dry.insulationM2KW(), Wettings.of(wetness).usual)))
                .orElse(dry);
    }

    /** How wet it is; empty where it is dry, and in more wind than the corrections for wind know. */
    private static Optional<Wetness> wetting(SpellNeeds needs) {
        return needs.spell()
                .wetting()
                .filter(wetness ->
                        Motion.outside(needs.surroundings().relativeMs()).isEmpty());
    }

    private static WetWear wet(Physics spell, ThreeWorn dry, Wettings wettings) {
        WetClothing open = spell.wet(dry.open().insulationM2KW(), wettings.worst);
        WetClothing middle = spell.wet(dry.middle().insulationM2KW(), wettings.usual);
        WetClothing close = spell.wet(dry.close().insulationM2KW(), wettings.mild);
        return new WetWear(
                new ThreeWorn(as(dry.open(), open), as(dry.middle(), middle), as(dry.close(), close)),
                Optional.of(new WetLoss(
                        Value.spanning(
                                lostClo(dry.middle(), middle), lostClo(dry.open(), open), lostClo(dry.close(), close)),
                        Value.spanning(middle.dryingWm2(), open.dryingWm2(), close.dryingWm2()))));
    }

    private static Worn as(Worn dry, WetClothing wet) {
        return new Worn(wet.equivalentM2KW(), dry.vapourResistanceM2KpaW());
    }

    private static double lostClo(Worn dry, WetClothing wet) {
        return dry.clo() - wet.equivalentM2KW() / Worn.M2KW_PER_CLO;
    }
}
