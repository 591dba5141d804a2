package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fibre.Fibres;
import campcloth.figure.Fault;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Fibres, cloths, rules and events for the tests of this room; the figures are of the right size and have no source. */
final class FireFixtures {

    static final List<String> CELLULOSIC = List.of("cotton", "flax", "viscose");
    static final List<String> PROTEIN = List.of("wool", "silk");
    static final List<String> MELTABLE = List.of(
            "polyester",
            "polyamide",
            "polypropylene",
            "acrylic",
            "elastane",
            "polylactide",
            "chlorofibre",
            "modacrylic");
    static final List<String> RESISTANT = List.of("aramid", "glass");
    static final List<String> UNNAMED = List.of("other", "unknown");

    static final Fibres FIBRES = fibres();

    private FireFixtures() {}

    static WornCloth plain(String blend, double weightGsm) {
        return WornCloth.woven(FIBRES.blend(blend), weightGsm, Surface.PLAIN, Fit.CLOSE, Layer.OUTER);
    }

    static Exposure at(FireRole role, double distanceM) {
        return new Exposure(role, Optional.of(distanceM), Optional.empty());
    }

    static Exposure at(FireRole role) {
        return new Exposure(role, Optional.empty(), Optional.empty());
    }

    static Spell spell(String name, Optional<OpenFire> fire) {
        return new Spell(name, 2, 12, 75, 1, Sun.NONE, Activity.SEATED, fire);
    }

    static OpenFire fire(FireRole role, double distanceM) {
        return new OpenFire(role, Optional.of(distanceM), Optional.empty());
    }

    static OpenFire fire(FireRole role) {
        return new OpenFire(role, Optional.empty(), Optional.empty());
    }

    static Event event(List<SafetyRule> rules, OpenFire... fires) {
        List<Spell> spells = new ArrayList<>(List.of(spell("noon", Optional.empty())));
        for (OpenFire fire : fires) {
            spells.add(spell("fireside " + spells.size(), Optional.of(fire)));
        }
        return new Event("Wendlow river camp", Season.SUMMER, spells, rules);
    }

    static SafetyRule mostMeltable(double percent, Optional<Double> withinM) {
        return new SafetyRule(
                SafetyRule.Authority.EVENT,
                "No more than " + percent + " % synthetic",
                Optional.of(percent),
                Set.of(),
                Optional.empty(),
                false,
                withinM);
    }

    static SafetyRule forbidden(String fibre) {
        return new SafetyRule(
                SafetyRule.Authority.VENUE,
                "No " + fibre,
                Optional.empty(),
                Set.of(fibre),
                Optional.empty(),
                false,
                Optional.empty());
    }

    static Reader resource(String path) {
        return new InputStreamReader(
                Objects.requireNonNull(FireFixtures.class.getResourceAsStream(path), path), StandardCharsets.UTF_8);
    }

    private static Fibres fibres() {
        StringBuilder table =
                new StringBuilder("key,name,family,agreedAllowancePercent,densityGCm3,regainPercent,softensC,"
                        + "meltsC,decomposesC,oxygenIndexPercent,diameterUm,modulusGPa,inTheFlame\n");
        CELLULOSIC.forEach(key -> table.append(row(key, "CELLULOSIC", "")));
        PROTEIN.forEach(key -> table.append(row(key, "PROTEIN", "")));
        List<String> softens = List.of("230", "170", "140", "190", "170", "60", "65", "120");
        for (int i = 0; i < MELTABLE.size(); i++) {
            table.append(row(MELTABLE.get(i), "MELTABLE", softens.get(i) + " TYPICAL test"));
        }
        table.append(row("aramid", "FLAME_RESISTANT", ""));
        table.append(row("glass", "MINERAL", ""));
        UNNAMED.forEach(key -> table.append(row(key, "UNNAMED", "")));
        List<Fault> faults = new ArrayList<>();
        try {
            Fibres fibres = Fibres.read(new StringReader(table.toString()), faults);
            if (!faults.isEmpty()) {
                throw new IllegalStateException(faults.get(0).sentence());
            }
            return fibres;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String row(String key, String family, String softens) {
        return key + "," + key + "," + family + ",,1.4 TYPICAL test,8 TYPICAL test," + softens + ",,,,,,burns\n";
    }
}
