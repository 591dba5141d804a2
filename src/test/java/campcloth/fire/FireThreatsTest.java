package campcloth.fire;

import static campcloth.fire.FireFixtures.at;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.event.FireRole;
import campcloth.fire.FireThreat.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each way in which a fire threatens a cloth, by cloth and by place. */
class FireThreatsTest {

    @Test
    void whereThereIsNoFireNothingThreatens() {
        assertThat(threats(FireFixtures.plain("polyester 100", 90), Exposure.none()))
                .isEmpty();
    }

    @Test
    void heatFlareUpAndSparksComeFromEveryFireAndContactOnlyWhereItCan() {
        WornCloth close = FireFixtures.plain("wool 100", 400);
        WornCloth loose = loose("wool 100", 400);
        assertThat(kinds(close, at(FireRole.SEATED, 2))).containsExactly(Kind.RADIANT_HEAT, Kind.FLARE_UP, Kind.SPARKS);
        assertThat(kinds(loose, at(FireRole.SEATED, 2))).contains(Kind.FLAME_CONTACT);
        assertThat(kinds(loose, at(FireRole.PASSING, 6))).doesNotContain(Kind.FLAME_CONTACT);
        assertThat(kinds(close, at(FireRole.SEATED, 0.9))).contains(Kind.FLAME_CONTACT);
        assertThat(kinds(close, at(FireRole.COOKING, 2))).contains(Kind.FLAME_CONTACT);
    }

    @Test
    void radiantHeatTellsFiguresWhereTheFormulaHoldsAndNoneWhereItDoesNot() {
        WornCloth cloth = FireFixtures.plain("polyester 100", 150);
        assertThat(text(cloth, at(FireRole.SEATED, 2), Kind.RADIANT_HEAT))
                .contains("0.60 to 0.80 kW/m2", "polyester softens at 230")
                .doesNotContain("Bare skin");
        assertThat(text(cloth, at(FireRole.SEATED, 1.2), Kind.RADIANT_HEAT)).contains("Bare skin can hurt after");
        assertThat(text(FireFixtures.plain("wool 100", 150), at(FireRole.SEATED, 2), Kind.RADIANT_HEAT))
                .contains("Nothing in it softens");
        assertThat(text(cloth, at(FireRole.SEATED, 0.5), Kind.RADIANT_HEAT))
                .contains("contact with flame")
                .doesNotContain("kW/m2");
    }

    @Test
    void flareUpNamesWhatMakesItThereAndWhatItDoes() {
        WornCloth polylactide = FireFixtures.plain("polylactide 40; cotton 60", 200);
        assertThat(text(polylactide, at(FireRole.COOKING, 2.5), Kind.FLARE_UP)).contains("Fat");
        assertThat(text(polylactide, at(FireRole.TENDING, 2.5), Kind.FLARE_UP)).contains("liquid fuel");
        assertThat(text(polylactide, at(FireRole.CARRYING), Kind.FLARE_UP)).contains("lamp fuel");
        assertThat(text(polylactide, at(FireRole.SEATED, 2.5), Kind.FLARE_UP))
                .contains("gust", "1.02 kW/m2", "polylactide softens");
        assertThat(text(polylactide, at(FireRole.SEATED, 1.2), Kind.FLARE_UP)).contains("flames can reach");
        assertThat(text(FireFixtures.plain("wool 100", 200), at(FireRole.SEATED, 2.5), Kind.FLARE_UP))
                .doesNotContain("softens");
    }

    @Test
    void sparksDifferByFibreFaceAndDistance() {
        Exposure near = at(FireRole.SEATED, 2);
        assertThat(text(FireFixtures.plain("polyester 100", 150), near, Kind.SPARKS))
                .contains("melts a hole through its polyester")
                .doesNotContain("smoulder");
        assertThat(text(FireFixtures.plain("cotton 100", 150), near, Kind.SPARKS))
                .contains("chars a hole into its cotton", "smoulder on")
                .doesNotContain("melts");
        WornCloth flannel =
                WornCloth.woven(FireFixtures.FIBRES.blend("cotton 100"), 170, Surface.RAISED, Fit.CLOSE, Layer.OUTER);
        assertThat(text(flannel, near, Kind.SPARKS)).contains("raised face catches sparks");
        assertThat(text(FireFixtures.plain("wool 100", 300), near, Kind.SPARKS))
                .contains("wool chars", "goes out", "upwind")
                .doesNotContain("smoulder");
        assertThat(text(FireFixtures.plain("wool 100", 300), at(FireRole.PASSING, 6), Kind.SPARKS))
                .contains("Most fall nearer");
        assertThat(text(FireFixtures.plain("glass 100", 300), near, Kind.SPARKS))
                .contains("Sparks mark it");
    }

    @Test
    void contactDiffersByWhatTheClothDoesInAFlame() {
        Exposure cooking = at(FireRole.COOKING);
        assertThat(text(FireFixtures.plain("polyester 65; cotton 35", 150), cooking, Kind.FLAME_CONTACT))
                .contains("polyester melts, sticks to skin");
        assertThat(text(FireFixtures.plain("cotton 100", 150), cooking, Kind.FLAME_CONTACT))
                .contains("cotton catches", "150 g/m2");
        assertThat(text(FireFixtures.plain("wool 100", 400), cooking, Kind.FLAME_CONTACT))
                .contains("it chars")
                .doesNotContain("catches");
        assertThat(text(loose("wool 100", 400), cooking, Kind.FLAME_CONTACT)).contains("Tie back");
    }

    /** Whoever is exposed at all is told of heat, flare-up and sparks, in whole sentences that promise nothing. */
    @Test
    void whateverTheClothAndThePlaceNothingIsPromisedAndNothingLeftOut() {
        Draw.often(20_000, 63_000_000, draw -> {
            WornCloth cloth = draw.cloth();
            Exposure exposure = draw.exposure();
            FireHazard hazard = FireGrading.grade(cloth, exposure);
            List<Kind> kinds = hazard.threats().stream().map(FireThreat::kind).toList();
            boolean complete = hazard.reach() == ExposureClass.NONE
                    ? kinds.isEmpty()
                    : kinds.containsAll(List.of(Kind.RADIANT_HEAT, Kind.FLARE_UP, Kind.SPARKS));
            boolean contact = !hazard.reach().atLeast(ExposureClass.CONTACT) || kinds.contains(Kind.FLAME_CONTACT);
            Draw.claim(
                    complete && contact && kinds.stream().distinct().count() == kinds.size(), cloth, exposure, kinds);
            hazard.threats().forEach(threat -> plainSpeech(threat.text(), cloth, exposure));
            hazard.heat().notes().forEach(note -> plainSpeech(note, cloth, exposure));
            plainSpeech(hazard.standBack().because(), cloth, exposure);
        });
    }

    private static void plainSpeech(String text, WornCloth cloth, Exposure exposure) {
        boolean promises = text.matches("(?is).*\\b(safe|safely|fireproof|compliant|certified|NaN|null|infinity)\\b.*");
        Draw.claim(!promises && text.matches("(?s)[A-Z0-9].*[.)]"), cloth, exposure, text);
    }

    private static List<FireThreat> threats(WornCloth cloth, Exposure exposure) {
        return FireGrading.grade(cloth, exposure).threats();
    }

    private static List<Kind> kinds(WornCloth cloth, Exposure exposure) {
        return threats(cloth, exposure).stream().map(FireThreat::kind).toList();
    }

    private static String text(WornCloth cloth, Exposure exposure, Kind kind) {
        return threats(cloth, exposure).stream()
                .filter(threat -> threat.kind() == kind)
                .map(FireThreat::text)
                .findFirst()
                .orElseThrow();
    }

    private static WornCloth loose(String blend, double weightGsm) {
        return WornCloth.woven(FireFixtures.FIBRES.blend(blend), weightGsm, Surface.PLAIN, Fit.LOOSE, Layer.OUTER);
    }
}
