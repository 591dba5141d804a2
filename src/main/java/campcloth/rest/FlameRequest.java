package campcloth.rest;

import campcloth.fibre.FlameFeature;
import campcloth.fibre.FlameKey;
import campcloth.fibre.ThreadSeen;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was seen of single threads of one cloth in a flame. */
record FlameRequest(
        @Schema(description = "warp and weft apart, and pile or stripes where there are any")
        @NotEmpty
        @Size(max = FlameKey.MOST_THREADS)
        List<@NotNull @Valid Thread> threads) {

    /** One thread. */
    @Schema(name = "BurntThread")
    record Thread(
            @Schema(example = "warp", description = "which thread; may be left out where there is one only")
            @Size(min = 1, max = 40)
            @Nullable
            String thread,

            @NotNull @Valid Observations observations) {}

    /** The answers, as {@code GET /api/burn-tests} lists them. */
    @Schema(
            name = "FlameObservations",
            description =
                    "answers by their short names, see GET /api/burn-tests; not-sure, or left out, is no evidence")
    record Observations(
            @Schema(example = "melts") @Nullable String approach,
            @Schema(example = "slow") @Nullable String flame,
            @Schema(example = "melts") @Nullable String molten,
            @Schema(example = "goes-out") @Nullable String removed,
            @Schema(example = "none") @Nullable String ember,
            @Schema(example = "pale") @Nullable String smoke,
            @Schema(example = "celery") @Nullable String odour,
            @Schema(example = "hard-bead") @Nullable String residue) {

        Map<FlameFeature, String> seen() {
            Map<FlameFeature, String> seen = new EnumMap<>(FlameFeature.class);
            put(seen, FlameFeature.APPROACH, approach);
            put(seen, FlameFeature.FLAME, flame);
            put(seen, FlameFeature.MOLTEN, molten);
            put(seen, FlameFeature.REMOVED, removed);
            put(seen, FlameFeature.EMBER, ember);
            put(seen, FlameFeature.SMOKE, smoke);
            put(seen, FlameFeature.ODOUR, odour);
            put(seen, FlameFeature.RESIDUE, residue);
            return seen;
        }

        private static void put(Map<FlameFeature, String> seen, FlameFeature feature, @Nullable String answer) {
            if (answer != null) {
                seen.put(feature, answer);
            }
        }
    }

    List<ThreadSeen> seen() {
        List<ThreadSeen> seen = new ArrayList<>();
        for (Thread told : threads) {
            String name = told.thread() == null ? ThreadSeen.ONLY : told.thread();
            seen.add(new ThreadSeen(name, told.observations().seen()));
        }
        return seen;
    }
}
