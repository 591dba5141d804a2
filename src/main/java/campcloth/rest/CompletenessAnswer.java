package campcloth.rest;

import campcloth.cloth.Completeness;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.figure.Basis;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How much is known of the cloths of the catalogue. */
record CompletenessAnswer(
        long cloths,

        @Schema(description = "over the whole catalogue") List<KnownBody> properties,

        @Schema(description = "the same by who put the cloths there; an origin that no cloth has is left out")
        List<OriginBody> origins,

        @Schema(
                description =
                        "fewest known figures first; prices are not measured, fibre diameters only of wool and hair")
        List<GapBody> worthMeasuring) {

    /** How a property is known over a number of cloths; the shares sum to 100. */
    @Schema(name = "PropertyKnown", description = "Percent of the cloths, by how the figure is known; they sum to 100")
    record KnownBody(
            String property,
            double measuredPercent,
            double declaredPercent,
            double typicalPercent,

            @Schema(description = "written down as an estimate, or computed when it is asked for")
            double estimatedPercent,

            @Schema(description = "not known and not estimated: only prices can be")
            double nonePercent) {

        static KnownBody of(Completeness.Tally tally, Property property) {
            return new KnownBody(
                    property.field(),
                    percent(tally.cloths(property, Basis.MEASURED), tally),
                    percent(tally.cloths(property, Basis.DECLARED), tally),
                    percent(tally.cloths(property, Basis.TYPICAL), tally),
                    percent(tally.cloths(property, Basis.ESTIMATED), tally),
                    percent(tally.clothsWithout(property), tally));
        }

        static List<KnownBody> all(Completeness.Tally tally) {
            return Arrays.stream(Property.values())
                    .map(property -> of(tally, property))
                    .toList();
        }

        private static double percent(long part, Completeness.Tally tally) {
            return tally.cloths() == 0 ? 0 : Rounded.to(100.0 * part / tally.cloths(), 1);
        }
    }

    /** The cloths of one origin. */
    @Schema(name = "OriginKnown")
    record OriginBody(KeptCloth.Origin origin, long cloths, List<KnownBody> properties) {}

    /** A cloth of which much could be measured. */
    @Schema(name = "WorthMeasuring")
    record GapBody(
            String id,
            String name,

            @Schema(description = "figures that were measured, declared or published")
            int known,

            @Schema(description = "figures that could be measured")
            int measurable,

            @Schema(description = "those that nobody measured, declared or published")
            List<String> missing) {

        static GapBody of(Completeness.Gap gap) {
            return new GapBody(
                    gap.kept().id(),
                    gap.kept().cloth().name(),
                    gap.known(),
                    gap.measurable(),
                    gap.missing().stream().map(Property::field).toList());
        }
    }

    static CompletenessAnswer of(Completeness completeness) {
        List<OriginBody> origins = new ArrayList<>();
        completeness
                .byOrigin()
                .forEach((origin, tally) -> origins.add(new OriginBody(origin, tally.cloths(), KnownBody.all(tally))));
        return new CompletenessAnswer(
                completeness.whole().cloths(),
                KnownBody.all(completeness.whole()),
                origins,
                completeness.worthMeasuring().stream().map(GapBody::of).toList());
    }
}
