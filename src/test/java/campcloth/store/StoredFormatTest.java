package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.plan.CuttingPlan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What stands in people's databases stays readable: samples in the form of the first schema, never to be changed. */
class StoredFormatTest {

    private final Json json = new Json();

    @Test
    void aClothOfTheFirstSchemaIsRead() throws IOException {
        Cloth cloth = json.read(sample("cloth"), ClothBody.class)
                .cloth(ShippedCatalogue.get().fibres());
        assertThat(cloth.name()).isEqualTo("Remnant from the bin");
        assertThat(cloth.blend().percentOf("flax")).isEqualTo(70);
        assertThat(cloth.required(Property.WEIGHT_GSM).high()).isEqualTo(220);
        assertThat(cloth.figure(Property.THICKNESS_MM)).isEmpty();
        assertThat(json.read(json.write(ClothBody.of(cloth)), ClothBody.class)).isEqualTo(ClothBody.of(cloth));
    }

    @Test
    void aFibreThatTheCatalogueNoLongerKnowsCountsAsUnknown() throws IOException {
        Cloth cloth = json.read(sample("cloth").replace("\"flax\"", "\"moonweed\""), ClothBody.class)
                .cloth(ShippedCatalogue.get().fibres());
        assertThat(cloth.blend().percentOf("unknown")).isEqualTo(70);
        assertThat(cloth.blend().meltablePercent()).isEqualTo(100);
    }

    @Test
    void anEventOfTheFirstSchemaIsRead() throws IOException {
        Event event = json.read(sample("event"), Event.class);
        assertThat(event.spells()).hasSize(2);
        assertThat(event.spells().get(1).fire().orElseThrow().role()).isEqualTo(FireRole.SEATED);
        assertThat(event.spells().get(1).fire().orElseThrow().kind()).isEmpty();
        assertThat(event.rules().get(0).maxMeltablePercent()).isEqualTo(Optional.of(33.0));
        assertThat(json.read(json.write(event), Event.class)).isEqualTo(event);
    }

    @Test
    void theKindOfAFireIsKept() throws IOException {
        String named = sample("event").replace("\"fireKw\": null", "\"fireKw\": null, \"kind\": \"BONFIRE\"");
        Event event = json.read(named, Event.class);
        assertThat(event.spells().get(1).fire().orElseThrow().heatKw()).hasValue(500.0);
        assertThat(json.read(json.write(event), Event.class)).isEqualTo(event);
    }

    @Test
    void aPlanOfTheFirstSchemaIsReadAndDrawsTheSameLayout() throws IOException {
        CuttingPlan plan = json.read(sample("cutting-plan"), CuttingPlan.class);
        assertThat(plan.placements()).hasSize(4);
        assertThat(plan.layout().lengthCm()).isEqualTo(plan.netLengthCm());
        assertThat(plan.cost().orElseThrow().currency()).isEqualTo("EUR");
        assertThat(json.read(json.write(plan), CuttingPlan.class)).isEqualTo(plan);
    }

    private static String sample(String name) throws IOException {
        try (var file = StoredFormatTest.class.getResourceAsStream("/stored/v1/" + name + ".json")) {
            return new String(java.util.Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
