package campcloth.errand;

import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Event;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Option;
import campcloth.garment.SewnBy;
import campcloth.plan.CuttingPlan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Draws errands with their plans: every design, options, cloths of the catalogue; the same seed draws the same. They are drawn once for
 * all properties, since each plan is a search.
 */
final class ErrandDraw {

    /** One draw. */
    record Drawn(long seed, Errand errand, SewnBy by, CuttingPlan plan, ErrandSheet sheet) {}

    private static final long SEED = 100;
    private static final int ROUNDS = 20;
    private static final List<String> SIZES = List.of("W-S", "M-M", "M-L");

    private static final List<Drawn> ALL =
            Designs.all().stream().flatMap(design -> of(design).stream()).toList();

    private final SplittableRandom random;
    private final Design design;

    private final long seed;

    private ErrandDraw(Design design, long seed) {
        this.design = design;
        this.seed = seed;
        this.random = new SplittableRandom(seed);
    }

    /** Tries a property on many draws of each design; a failure names design, seed and draw. */
    static void always(Consumer<Drawn> property) {
        for (Drawn drawn : ALL) {
            try {
                property.accept(drawn);
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError(
                        "seed " + drawn.seed() + ", " + drawn.errand().garment() + " of "
                                + drawn.errand().cloth().id() + ": " + broken.getMessage(),
                        broken);
            }
        }
    }

    private static List<Drawn> of(Design design) {
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            ErrandDraw draw = new ErrandDraw(design, SEED + i);
            draw.unlessRefused(draw.errand()).ifPresent(drawn::add);
        }
        if (drawn.size() < ROUNDS / 3) {
            throw new AssertionError("of " + ROUNDS + " draws of " + design.key() + " only " + drawn.size() + " lie");
        }
        return drawn;
    }

    /** Options that contradict each other and cloth that is too narrow are refused: then there is no plan. */
    private Optional<Drawn> unlessRefused(Errand errand) {
        SewnBy by = random.nextBoolean() ? SewnBy.HAND : SewnBy.MACHINE;
        try {
            CuttingPlan plan = ErrandSamples.plan(errand, random.nextInt(4) > 0, by);
            return Optional.of(new Drawn(seed, errand, by, plan, ErrandSamples.SHEETS.of(errand, plan)));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    private Errand errand() {
        WantedGarment garment = new WantedGarment(
                design.key(),
                Map.of(),
                Optional.of(SIZES.get(random.nextInt(SIZES.size()))),
                random.nextBoolean() ? Optional.empty() : Optional.of(random.nextBoolean()),
                1 + random.nextInt(2),
                options(),
                random.nextInt(3) == 0
                        ? new Outfit(
                                List.of(new OutfitPart(Kind.LINING, Optional.of(cloth().cloth()), Optional.empty())))
                        : Outfit.UNTOLD,
                "",
                others());
        Event camp = ErrandSamples.camp();
        Event event = random.nextInt(3) == 0 ? camp.withRules(List.of()) : camp;
        return new Errand("Drawn", TakenEvent.told(event), garment, cloth(), "plan", Instant.EPOCH);
    }

    private List<OtherWearer> others() {
        return random.nextInt(4) > 0
                ? List.of()
                : Stream.generate(() -> new OtherWearer(
                                "Somebody",
                                Map.of(),
                                Optional.of(SIZES.get(random.nextInt(SIZES.size()))),
                                1 + random.nextInt(2)))
                        .limit(1 + random.nextInt(2))
                        .toList();
    }

    private ChosenCloth cloth() {
        List<String> ids = List.copyOf(ShippedCatalogue.get().cloths().keySet());
        return ErrandSamples.cloth(ids.get(random.nextInt(ids.size())));
    }

    private Map<String, Object> options() {
        Map<String, Object> options = new TreeMap<>();
        for (Option option : design.options()) {
            if (option.value() instanceof Option.YesNo && random.nextInt(3) == 0) {
                options.put(option.key(), random.nextBoolean());
            } else if (option.value() instanceof Option.Count count && random.nextInt(3) == 0) {
                options.put(
                        option.key(),
                        random.nextInt(
                                (int) count.range().least(), (int) count.range().most() + 1));
            }
        }
        return options;
    }
}
