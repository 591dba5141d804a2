package campcloth.rest;

import campcloth.cloth.KeptCloth.Origin;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.Swatches;
import campcloth.errand.Errand;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.errand.OtherWearer;
import campcloth.errand.TakenEvent;
import campcloth.event.Events;
import campcloth.plan.Plans;
import campcloth.supply.ListWriter;
import campcloth.supply.SupplierLists;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.json.JsonMapper;

/** The files of the export: cloths, events with their rules, plans, swatches, errands. */
@Configuration
class ExportParts {

    private record Part(String file, Writing writing) implements ExportPart {

        @Override
        public void write(OutputStream out) throws IOException {
            writing.to(out);
        }
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    @Bean
    ExportPart ownCloths(SupplierLists lists) {
        return new Part("cloths.csv", out -> cloths(lists, EnumSet.of(Origin.OWN, Origin.EDITED), out));
    }

    @Bean
    ExportPart ownEvents(Events events, JsonMapper json) {
        return new Part(
                "events.json", out -> array(out, json, each -> events.each(kept -> each.accept(EventBody.of(kept)))));
    }

    @Bean
    ExportPart ownPlans(Plans plans, JsonMapper json) {
        return new Part(
                "plans.json",
                out -> array(out, json, each -> plans.each(kept -> each.accept(CuttingPlanAnswer.of(kept)))));
    }

    @Bean
    ExportPart ownSwatches(Swatches swatches, JsonMapper json) {
        return new Part(
                "swatches.json",
                out -> array(out, json, each -> swatches.each(kept -> each.accept(ExportedSwatch.of(kept)))));
    }

    @Bean
    ExportPart ownErrands(Errands errands, JsonMapper json) {
        return new Part(
                "errands.json",
                out -> array(out, json, each -> errands.each(kept -> each.accept(ExportedErrand.of(kept)))));
    }

    /** A garment for an event as it is kept, with event and cloth as they were; its plan stands among the plans. */
    private record ExportedErrand(
            String id,
            String title,
            String createdAt,
            @Nullable String eventId,
            EventBody event,
            String design,
            Map<String, Double> wearer,
            @Nullable String size,
            int count,
            Map<String, Object> options,
            String wearerName,
            List<ExportedWearer> others,
            ClothBody cloth,
            String planId) {

        static ExportedErrand of(KeptErrand kept) {
            Errand errand = kept.errand();
            return new ExportedErrand(
                    kept.id(),
                    errand.title(),
                    errand.createdAt().toString(),
                    errand.event().onFile().map(TakenEvent.OnFile::id).orElse(null),
                    EventBody.of(null, errand.event().event()),
                    errand.garment().design(),
                    errand.garment().wearerCm(),
                    errand.garment().size().orElse(null),
                    errand.garment().count(),
                    errand.garment().options(),
                    errand.garment().wearerName(),
                    errand.garment().others().stream().map(ExportedWearer::of).toList(),
                    ClothBody.of(errand.cloth().id(), errand.cloth().cloth()),
                    errand.planId());
        }
    }

    /** Somebody else for whom a garment is cut. */
    private record ExportedWearer(
            String name,
            Map<String, Double> wearer,
            @Nullable String size,
            int count) {

        static ExportedWearer of(OtherWearer other) {
            return new ExportedWearer(
                    other.name(), other.wearerCm(), other.size().orElse(null), other.count());
        }
    }

    /** A swatch as it was told; what follows from it stands in the figures of its cloth. */
    private record ExportedSwatch(String id, String clothId, String madeAt, SwatchBody swatch) {

        static ExportedSwatch of(KeptSwatch kept) {
            return new ExportedSwatch(
                    kept.id(), kept.clothId(), kept.madeAt().toString(), SwatchBody.of(kept.swatch()));
        }
    }

    /** The cloths as a list. */
    static void cloths(SupplierLists lists, Set<Origin> origins, OutputStream out) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        ListWriter writer = new ListWriter(text);
        unchecked(() -> lists.each(origins, line -> {
            try {
                writer.write(line);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }));
        text.flush();
    }

    private static void array(OutputStream out, JsonMapper json, Consumer<Consumer<Object>> things) throws IOException {
        String[] before = {"[\n"};
        unchecked(() -> things.accept(thing -> {
            try {
                out.write((before[0] + json.writeValueAsString(thing)).getBytes(StandardCharsets.UTF_8));
                before[0] = ",\n";
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }));
        out.write((before[0].startsWith(",") ? "\n]\n" : "[]\n").getBytes(StandardCharsets.UTF_8));
    }

    private static void unchecked(Runnable work) throws IOException {
        try {
            work.run();
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }
}
