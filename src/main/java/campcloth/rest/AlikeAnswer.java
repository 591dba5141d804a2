package campcloth.rest;

import campcloth.cloth.Alike;
import campcloth.cloth.Cloth;
import campcloth.cloth.EstimateCheck;
import campcloth.cloth.Kinship;
import campcloth.cloth.Neighbour;
import campcloth.cloth.Property;
import campcloth.cloth.Trait;
import campcloth.figure.Figure;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The nearest known cloths, and the estimates of the cloth asked about held against what is known of them. */
record AlikeAnswer(
        String name,

        @Schema(description = "every figure of the cloth asked about, known or estimated, by field name")
        Map<String, FigureBody> figures,

        @Schema(description = "the nearest first") List<NeighbourBody> neighbours,

        @Schema(description = "each figure of the cloth asked about that is estimated")
        List<CheckBody> checks,

        List<String> notes) {

    private static final List<String> NOTES = List.of(
            "The distance orders cloths by likeness; it is no physical measure, and its scales are choices of this project.",
            "A check is a look, not a correction: a neighbour is another cloth, of another weight or weave, and its figures"
                    + " may themselves be only usual for its sort. Measure your cloth where a figure matters.",
            "Likeness says nothing of fire: cloths that are close can burn differently. Ask the advice for your event.");

    /** A cloth of the catalogue that is like the one asked about. */
    @Schema(name = "ClothNeighbour")
    record NeighbourBody(
            String id,
            String name,

            @Schema(description = "0 where nothing tells the cloths apart; about 1 for each great difference")
            double distance,

            @Schema(description = "DISTANT neighbours are shown, and not used in the checks")
            Kinship.Closeness closeness,

            List<DifferenceBody> differs,
            List<String> because,

            @Schema(description = "its figures that were measured, declared or published; no estimates")
            Map<String, FigureBody> known) {

        static NeighbourBody of(Neighbour neighbour) {
            Kinship kinship = neighbour.kinship();
            return new NeighbourBody(
                    neighbour.kept().id(),
                    neighbour.kept().cloth().name(),
                    Rounded.to(kinship.distance(), 3),
                    kinship.closeness(),
                    kinship.differs().stream().map(DifferenceBody::of).toList(),
                    kinship.because(),
                    figures(neighbour.known()));
        }
    }

    /** A trait in which two cloths differ. */
    @Schema(name = "ClothDifference")
    record DifferenceBody(
            Trait trait,

            @Schema(description = "its part of the distance")
            double part,

            @Schema(description = "the cloth asked about") String here,
            @Schema(description = "the neighbour") String there) {

        static DifferenceBody of(Kinship.Difference difference) {
            return new DifferenceBody(
                    difference.trait(), Rounded.to(difference.part(), 3), difference.here(), difference.there());
        }
    }

    /** An estimate beside what neighbours know. */
    @Schema(name = "EstimateCheck")
    record CheckBody(
            String property,
            FigureBody estimate,
            EstimateCheck.Agreement agreement,

            @Schema(description = "ids of the neighbours whose known value lies within the interval of the estimate")
            List<String> within,

            @Schema(description = "ids of those whose known value does not")
            List<String> outside) {

        static CheckBody of(EstimateCheck check) {
            Property property = check.property();
            return new CheckBody(
                    property.field(),
                    FigureBody.of(check.estimate(), property.unit()),
                    check.agreement(),
                    check.within(),
                    check.outside());
        }
    }

    static AlikeAnswer of(Cloth asked, Alike alike) {
        return new AlikeAnswer(
                asked.name(),
                figures(alike.completed().figures()),
                alike.neighbours().stream().map(NeighbourBody::of).toList(),
                alike.checks().stream().map(CheckBody::of).toList(),
                NOTES);
    }

    private static Map<String, FigureBody> figures(Map<Property, Figure> figures) {
        Map<String, FigureBody> bodies = new LinkedHashMap<>();
        figures.forEach((property, figure) -> bodies.put(property.field(), FigureBody.of(figure, property.unit())));
        return bodies;
    }
}
