package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Absorbency;
import campcloth.cloth.Cloth;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchFigures;
import campcloth.cloth.Washing;
import campcloth.errand.Errand;
import campcloth.errand.TakenEvent;
import campcloth.errand.WantedGarment;
import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.FireRole;
import campcloth.event.Provenance;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.event.Shelter;
import campcloth.event.Sky;
import campcloth.event.Spell;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    void aTreatmentAgainstFlameIsKeptAndOldRowsHaveNone() throws IOException {
        Cloth old = json.read(sample("cloth"), ClothBody.class)
                .cloth(ShippedCatalogue.get().fibres());
        assertThat(old.flameTreatment()).isEqualTo(FlameTreatment.NONE);
        assertThat(json.write(ClothBody.of(old))).doesNotContain("flameTreatment");
        ClothBody treated = ClothBody.of(old.with(FlameTreatment.DECLARED));
        assertThat(json.read(json.write(treated), ClothBody.class)
                        .cloth(ShippedCatalogue.get().fibres())
                        .flameTreatment())
                .isEqualTo(FlameTreatment.DECLARED);
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
        assertThat(event.spells()).allMatch(spell -> spell.wet().isEmpty());
        assertThat(event.rules().get(0).conditions().maxMeltablePercent()).isEqualTo(Optional.of(33.0));
        assertThat(json.read(json.write(event), Event.class)).isEqualTo(event);
    }

    @Test
    void anEventOfTheFirstSchemaHasNoDateAndAsksNoMoreThanItDid() throws IOException {
        Event event = json.read(sample("event"), Event.class);
        assertThat(event.dates()).isEmpty();
        SafetyRule third = new SafetyRule(
                SafetyRule.Authority.EVENT,
                "No more than a third synthetic within three metres of open fire",
                Optional.of(33.0),
                Set.of(),
                Optional.empty(),
                false,
                Optional.of(3.0));
        assertThat(event.rules()).containsExactly(third);
    }

    @Test
    void anEventOfTheSecondFormIsRead() throws IOException {
        Event event = json.read(StoredSamples.read("v2/event"), Event.class);
        assertThat(event.dates()).contains(new EventDates(LocalDate.of(2027, 7, 16), LocalDate.of(2027, 7, 18)));
        SafetyRule rule = event.rules().get(0);
        RuleConditions asked = new RuleConditions(
                Optional.of(5.0),
                Set.of("acrylic"),
                Set.of("flax", "wool"),
                Optional.of(250.0),
                true,
                true,
                Optional.of(1.5),
                Optional.of("treatment that lasts"),
                Optional.of("test report"),
                Optional.of("whether the marshal has seen it"));
        assertThat(rule.conditions()).isEqualTo(asked);
        assertThat(rule.reach())
                .isEqualTo(new RuleReach(Optional.of(3.0), Set.of(FireRole.COOKING, FireRole.CARRYING)));
        assertThat(rule.provenance())
                .isEqualTo(new Provenance(
                        Optional.of("Wendlow camp rules, page 2"),
                        Optional.of(LocalDate.of(2027, 2, 1)),
                        Optional.of("3"),
                        Optional.of(LocalDate.of(2027, 3, 1)),
                        Optional.of(LocalDate.of(2027, 12, 31))));
        assertThat(json.read(json.write(event), Event.class)).isEqualTo(event);
    }

    @Test
    void theKindOfAFireIsKept() throws IOException {
        String named = sample("event").replace("\"fireKw\": null", "\"fireKw\": null, \"kind\": \"BONFIRE\"");
        Event event = json.read(named, Event.class);
        assertThat(event.spells().get(1).fire().orElseThrow().heatKw()).hasValue(500.0);
        assertThat(json.read(json.write(event), Event.class)).isEqualTo(event);
        assertThat(event.place()).isEmpty();
        assertThat(event.spells().get(0).sky()).isEmpty();
    }

    @Test
    void placeAndSkyAreKept() throws IOException {
        Event old = json.read(sample("event"), Event.class);
        Spell first = old.spells().get(0);
        Sky sky = new Sky(Optional.of(LocalTime.of(13, 30)), Optional.of(25.0), Optional.of(Shelter.OPEN));
        Spell told = first.withSky(sky);
        Event event = new Event(old.name(), old.season(), List.of(told), old.rules()).at(51.5);
        assertThat(json.read(json.write(event), Event.class)).isEqualTo(event);
    }

    @Test
    void anErrandOfItsFirstFormIsReadAndKeptAlike() throws IOException {
        Errand errand = errand(StoredSamples.read("v4/errand"));
        assertThat(errand.title()).isEqualTo("Tunics for the cooks");
        assertThat(errand.event().onFile()).contains(new TakenEvent.OnFile("0f6d3c5e-6a4e-4f4e-9c39-1f0f9f7f2b11", 3));
        assertThat(errand.event().event().spells()).hasSize(2);
        assertThat(errand.event().event().rules()).hasSize(1);
        assertThat(errand.garment().wearerCm()).containsEntry("finishedChestCm", 118.0);
        assertThat(errand.garment().size()).contains("M-M");
        assertThat(errand.garment().touchesSkin()).contains(true);
        assertThat(errand.garment().count()).isEqualTo(2);
        assertThat(errand.garment().options()).containsEntry("sideSplits", true).containsEntry("splitLengthCm", 22.5);
        OutfitPart shirt = errand.garment().outfit().parts().get(0);
        assertThat(shirt.spells()).containsExactly("noon");
        assertThat(shirt.cloth()).isPresent();
        assertThat(errand.cloth().id()).isEqualTo("linen-plain-185");
        assertThat(errand.cloth().cloth().required(Property.WEIGHT_GSM).value()).isEqualTo(185);
        assertThat(errand.createdAt()).isEqualTo("2027-05-02T09:30:00Z");
        assertThat(errand(json.write(ErrandBody.of(errand)))).isEqualTo(errand);
    }

    @Test
    void anErrandThatLacksWhatCanBeLackedIsOneAsUsual() throws IOException {
        String bare = StoredSamples.read("v4/errand-bare");
        Errand errand = errand(bare);
        assertThat(errand.garment()).isEqualTo(WantedGarment.usual("tunic", Map.of()));
        assertThat(errand.event().onFile()).isEmpty();
        assertThat(errand(json.write(ErrandBody.of(errand)))).isEqualTo(errand);
    }

    private Errand errand(String text) {
        return json.read(text, ErrandBody.class).errand(ShippedCatalogue.get().fibres());
    }

    @Test
    void aSwatchOfItsFirstFormIsReadAndSaysTheSame() throws IOException {
        Swatch swatch = json.read(StoredSamples.read("v3/swatch"), Swatch.class);
        assertThat(swatch.washed().orElseThrow().warp().get(0).afterCm()).containsExactly(47.3);
        assertThat(swatch.washed().orElseThrow().washing().drying()).contains(Washing.Drying.LINE);
        SwatchFigures found = SwatchFigures.of(swatch);
        assertThat(found.figures()).hasSize(5);
        assertThat(found.absorbency()).contains(Absorbency.ABSORBS);
        assertThat(json.read(json.write(swatch), Swatch.class)).isEqualTo(swatch);
    }

    @Test
    void aClothWithoutSwatchesIsKeptAsBeforeThereWereAny() throws IOException {
        ClothBody old = json.read(sample("cloth"), ClothBody.class);
        assertThat(json.write(old)).doesNotContain("beforeSwatches");
        assertThat(old.withoutSwatches())
                .isEqualTo(old.cloth(ShippedCatalogue.get().fibres()).figures());
    }

    private static String sample(String name) throws IOException {
        return StoredSamples.read("v1/" + name);
    }
}
