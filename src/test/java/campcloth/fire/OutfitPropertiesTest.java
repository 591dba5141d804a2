package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.event.FireRole;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What holds for every outfit at every fire. */
class OutfitPropertiesTest {

    private static final double ROUNDING = 1e-9;

    /** Each part as a cloth of its own in its own place, graded without the outfit. */
    @Test
    void anOutfitIsNeverBetterThanAnyOfItsCloths() {
        always(7101, draw -> {
            WornCloth garment = draw.cloth();
            Outfit outfit = Outfits.outfit(draw);
            Exposure exposure = draw.exposure();
            OutfitHazard whole = Outfits.grade(garment, outfit, exposure);
            neverBetter(FireGrading.grade(garment, exposure), whole, garment, outfit, exposure);
            for (OutfitPart part : outfit.parts()) {
                boolean isCloth = part.kind() != Kind.THREAD && part.kind() != Kind.TRIM;
                if (isCloth && part.cloth().isPresent()) {
                    boolean close = List.of(Kind.WARM_UNDERWEAR, Kind.MITTENS, Kind.FOOTWEAR)
                            .contains(part.kind());
                    Fit fit = part.kind().isSewnIn() ? garment.fit() : close ? Fit.CLOSE : Fit.LOOSE;
                    WornCloth alone =
                            WornCloth.of(part.cloth().get(), fit, part.kind().layer());
                    neverBetter(FireGrading.grade(alone, exposure), whole, garment, outfit, exposure);
                }
            }
        });
    }

    @Test
    void addingAPartNeverLowersAnything() {
        always(7202, draw -> {
            WornCloth garment = draw.cloth();
            Outfit less = Outfits.outfit(draw);
            OutfitPart part = Outfits.part(draw);
            Exposure exposure = draw.exposure();
            OutfitHazard before = Outfits.grade(garment, less, exposure);
            OutfitHazard after = Outfits.grade(garment, Outfits.with(less, part), exposure);
            claim(atLeast(after, before), garment, less, part, exposure);
            before.parts().forEach(p -> {
                double now = after.parts().stream()
                        .filter(q -> q.part().part().equals(p.part().part()))
                        .mapToDouble(q -> q.hazard().hazard())
                        .max()
                        .orElseThrow();
                claim(now >= p.hazard().hazard() - ROUNDING, "a part became better", garment, less, part, exposure);
            });
        });
    }

    /** Cloak, tunic beneath and shirt hang alike; only their place differs. */
    @Test
    void aPartThatMeltsIsNeverBetterNearerToTheSkin() {
        always(7303, draw -> {
            WornCloth garment = draw.cloth();
            WornCloth cloth = draw.cloth();
            Exposure exposure = draw.exposure();
            OutfitHazard out = Outfits.grade(garment, Outfits.of(Outfits.part(Kind.HOOD, cloth)), exposure);
            OutfitHazard middle = Outfits.grade(garment, Outfits.of(Outfits.part(Kind.UNDER_TUNIC, cloth)), exposure);
            OutfitHazard skin = Outfits.grade(garment, Outfits.of(Outfits.part(Kind.SHIRT, cloth)), exposure);
            claim(atLeast(middle, out), garment, cloth, exposure);
            claim(atLeast(skin, middle), garment, cloth, exposure);
        });
    }

    @Test
    void aPartOfUntoldClothIsNeverBetterThanOneOfAnyCloth() {
        always(7404, draw -> {
            Kind kind = draw.one(
                    Arrays.stream(Kind.values()).filter(k -> k != Kind.FOOTWEAR).toList());
            WornCloth garment = draw.cloth();
            WornCloth cloth = draw.cloth();
            Outfit rest = Outfits.outfit(draw);
            Exposure exposure = draw.exposure();
            OutfitHazard told = Outfits.grade(garment, Outfits.with(rest, Outfits.part(kind, cloth)), exposure);
            OutfitHazard untold = Outfits.grade(garment, Outfits.with(rest, Outfits.untold(kind)), exposure);
            claim(atLeast(untold, told), kind, garment, cloth, exposure);
        });
    }

    @Test
    void whatLiesOverAPartNeverMakesItBetter() {
        always(7505, draw -> {
            WornCloth garment = draw.cloth();
            Outfit shirt = Outfits.of(Outfits.part(Kind.SHIRT, draw.cloth()));
            OutfitPart coat =
                    Outfits.part(draw.one(List.of(Kind.OVERGARMENT, Kind.CLOAK)), FireFixtures.plain("wool 100", 500));
            Exposure exposure = draw.exposure();
            claim(
                    atLeast(
                            Outfits.grade(garment, Outfits.with(shirt, coat), exposure),
                            Outfits.grade(garment, shirt, exposure)),
                    garment,
                    shirt,
                    exposure);
        });
    }

    /** At contact whatever melts asks for care, the thread too; where people sit it never decides by itself. */
    @Test
    void threadAsksForCareAtTheFlameAndNeverRulesOutWhereOneSits() {
        always(7606, draw -> {
            WornCloth garment = draw.cloth();
            WornCloth thread = draw.cloth();
            Outfit outfit = Outfits.of(Outfits.part(Kind.THREAD, thread));
            OutfitHazard contact =
                    Outfits.grade(garment, outfit, new Exposure(FireRole.COOKING, Optional.empty(), Optional.empty()));
            if (thread.blend().meltablePercent() > 0) {
                claim(contact.grade().compareTo(FireGrade.HIGH) >= 0, garment, thread);
                claim(contact.meltWarning().compareTo(MeltWarning.WARN) >= 0, garment, thread);
            }
            Exposure seated = new Exposure(FireRole.SEATED, Optional.of(draw.between(1.5, 3)), Optional.of(50.0));
            FireHazard alone = FireGrading.grade(garment, seated);
            OutfitHazard sewn = Outfits.grade(garment, outfit, seated);
            claim(
                    alone.grade() == FireGrade.SEVERE || sewn.grade() != FireGrade.SEVERE,
                    "thread ruled it out",
                    garment,
                    thread,
                    seated);
            claim(
                    alone.meltWarning() == MeltWarning.STOP || sewn.meltWarning() != MeltWarning.STOP,
                    "thread stopped it",
                    garment,
                    thread,
                    seated);
        });
    }

    @Test
    void aGarmentUnderAnotherIsGradedAsUnderIt() {
        always(7707, draw -> {
            WornCloth garment = draw.cloth().lying(Layer.OUTER);
            Outfit cloak = Outfits.of(Outfits.part(Kind.CLOAK, FireFixtures.plain("wool 100", 500)));
            Exposure exposure = draw.exposure();
            FireHazard own =
                    Outfits.grade(garment, cloak, exposure).parts().get(0).hazard();
            claim(
                    own.hazard()
                            == FireGrading.grade(garment.lying(Layer.MIDDLE), exposure)
                                    .hazard(),
                    garment,
                    exposure);
        });
    }

    private static void neverBetter(FireHazard part, OutfitHazard whole, Object... counterexample) {
        claim(
                whole.hazard() >= part.hazard() - ROUNDING
                        && whole.grade().compareTo(part.grade()) >= 0
                        && whole.meltWarning().compareTo(part.meltWarning()) >= 0
                        && whole.standBackM() >= part.standBackM() - ROUNDING,
                counterexample);
    }

    private static boolean atLeast(OutfitHazard worse, OutfitHazard milder) {
        return worse.hazard() >= milder.hazard() - ROUNDING
                && worse.grade().compareTo(milder.grade()) >= 0
                && worse.meltWarning().compareTo(milder.meltWarning()) >= 0
                && worse.standBackM() >= milder.standBackM() - ROUNDING;
    }
}
