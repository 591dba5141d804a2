package campcloth.errand;

import campcloth.advice.Adviser;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import campcloth.fire.OutfitAdvice;
import campcloth.garment.SewnBy;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlan;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.Fold;
import campcloth.plan.Particulars;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Errands of the Wendlow river camp. */
public final class ErrandSamples {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();

    private static final SafetyRule NO_SYNTHETICS = RuleDraft.of(
                    Authority.EVENT, "No synthetic fibres within three metres of open fire")
            .mostMeltable(0)
            .rule();

    private ErrandSamples() {}

    /** Two days by the river, an evening at the cook fire. */
    public static Event camp() {
        Spell noon = new Spell("noon", 5, 27, 50, 1.5, Sun.FULL, Activity.WALKING, Optional.empty());
        Spell cooking = new Spell(
                "supper",
                2,
                12,
                75,
                1,
                Sun.NONE,
                Activity.STANDING,
                Optional.of(new OpenFire(FireRole.COOKING, Optional.of(0.8), Optional.empty())));
        return new Event("Wendlow river camp", Season.SUMMER, List.of(noon, cooking), List.of(NO_SYNTHETICS));
    }

    public static ChosenCloth cloth(String id) {
        return new ChosenCloth(id, CATALOGUE.cloth(id));
    }

    /** A tunic with all that can be told. */
    public static Errand tunic(Instant createdAt) {
        OutfitPart shirt =
                new OutfitPart(Kind.SHIRT, Optional.of(anyCloth().cloth()), Optional.empty(), Set.of("noon"));
        WantedGarment garment = new WantedGarment(
                "tunic",
                Map.of("finishedChestCm", 118.0, "lengthCm", 96.5),
                Optional.of("M-M"),
                Optional.of(true),
                2,
                Map.of("sideSplits", true, "splitLengthCm", 22.5),
                new Outfit(List.of(shirt)));
        return new Errand(
                "Tunics for the cooks",
                new TakenEvent(camp(), Optional.of(new TakenEvent.OnFile("0f6d3c5e-6a4e-4f4e-9c39-1f0f9f7f2b11", 3))),
                garment,
                anyCloth(),
                "5f3ab2d6-3a59-4f19-8b7e-4f4df6b6a9f0",
                createdAt);
    }

    /** The same tunic for three people, two of whom were not measured; no two are as wide. */
    public static Errand group(Instant createdAt) {
        WantedGarment garment = new WantedGarment(
                "tunic",
                Map.of("chestCm", 98.0),
                Optional.of("M-M"),
                Optional.of(true),
                1,
                Map.of(),
                Outfit.UNTOLD,
                "Ansel",
                List.of(
                        new OtherWearer("Berit", Map.of(), Optional.of("W-S"), 2),
                        new OtherWearer("", Map.of("lengthCm", 101.0), Optional.of("M-L"), 1)));
        return new Errand(
                "Tunics for the watch",
                TakenEvent.told(camp()),
                garment,
                anyCloth(),
                "5f3ab2d6-3a59-4f19-8b7e-4f4df6b6a9f0",
                createdAt);
    }

    /** One of usual size, nobody measured. */
    static Errand errand(String design, String clothId, Event event, Outfit outfit) {
        WantedGarment garment =
                new WantedGarment(design, Map.of(), Optional.of("M-M"), Optional.empty(), 1, Map.of(), outfit);
        return new Errand("An errand", TakenEvent.told(event), garment, cloth(clothId), "plan", Instant.EPOCH);
    }

    /** Linen of middling weight. */
    public static ChosenCloth anyCloth() {
        return cloth("linen-plain-185");
    }

    static final Adviser ADVISER;
    static final ErrandSheets SHEETS;

    static {
        FireAdvice fire = new FireAdvice(new FireRules(CATALOGUE.fibres()));
        ADVISER = new Adviser(fire);
        SHEETS = new ErrandSheets(ADVISER, new OutfitAdvice(fire), CATALOGUE.sizes(), CATALOGUE.fibres());
    }

    /** The plan for an errand. */
    public static CuttingPlan plan(Errand errand, boolean prewash, SewnBy by) {
        ClothToCut cloth = ClothToCut.of(errand.cloth().cloth(), 1, prewash);
        CuttingOrder order = new CuttingOrder(
                cloth,
                errand.garment().lines(CATALOGUE.sizes()),
                Optional.empty(),
                Fold.ANY,
                CuttingOrder.USUAL_STEP_CM,
                new Particulars(by, List.of(), Optional.empty()));
        return new CuttingPlanner(0.02).plan(order);
    }

    static ErrandSheet sheet(Errand errand) {
        return SHEETS.of(errand, plan(errand, true, SewnBy.MACHINE));
    }
}
