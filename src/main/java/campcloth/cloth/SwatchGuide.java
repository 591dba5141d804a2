package campcloth.cloth;

import java.util.List;

/**
 * How to take each measurement at home. What standards ask for stands beside the step; the rest is common practice, no source,
 * unless said.
 */
public final class SwatchGuide {

    /**
     * One measurement.
     *
     * @param field where it goes in a swatch
     * @param title what it is
     * @param gives names of the figures that come of it; empty where it is an observation
     * @param needs what to have at hand
     * @param steps what to do, in order
     * @param cautions what can hurt somebody, the cloth or the result
     * @param sources ids of the sources it leans on
     */
    public record Measuring(
            String field,
            String title,
            List<String> gives,
            List<String> needs,
            List<String> steps,
            List<String> cautions,
            List<String> sources) {

        public Measuring {
            gives = List.copyOf(gives);
            needs = List.copyOf(needs);
            steps = List.copyOf(steps);
            cautions = List.copyOf(cautions);
            sources = List.copyOf(sources);
        }
    }

    /** Before any of them. */
    public static final List<String> FIRST = List.of(
            "Cut the piece square to the threads, a hand's breadth from the selvedge and the cut end, where cloth is pulled.",
            "Let it lie flat and loose overnight in the room where you measure; laboratories use 20 degrees Celsius and 65 % humidity.",
            "Draw an arrow along the warp, the direction of the selvedge, before the piece is cut off.",
            "Never measure with a flame here: how a cloth burns is no matter for a home test of this kind.");

    private static final Measuring WEIGHED = new Measuring(
            "weighed",
            "Mass per area",
            List.of(Property.WEIGHT_GSM.field()),
            List.of(
                    "scale that reads to 0.1 g or finer",
                    "ruler that reads to 1 mm",
                    "sharp shears or a rotary cutter"),
            List.of(
                    "Check the control length of the printed card with a ruler before you trust its square.",
                    "Cut three squares of 10 x 10 cm from different places, not all from the same threads.",
                    "Measure both sides of each square, then weigh each by itself, the scale set to zero first.",
                    "With a kitchen scale of 1 g cut pieces of 50 x 50 cm instead: a small square weighs too little for it."),
            List.of(
                    "Cut away from your hand, on a surface that may be cut; put the blade away between cuts.",
                    "Weigh before washing: shrunk cloth weighs more for its area."),
            List.of("iso-3801", "iso-139", "project-swatch"));

    private static final Measuring WASHED = new Measuring(
            "washed",
            "Shrinkage along and across",
            List.of(Property.SHRINK_WARP_PERCENT.field(), Property.SHRINK_WEFT_PERCENT.field()),
            List.of(
                    "piece of 60 x 60 cm, its edges overcast",
                    "contrasting thread or a pen that washing does not take out",
                    "ruler longer than 50 cm that reads to 1 mm"),
            List.of(
                    "Mark three pairs along the warp and three along the weft, each pair 50.0 cm apart (35 cm at least) and"
                            + " 5 cm or more from the edges.",
                    "Measure each pair on the flat dry piece without pulling, and write it down before washing.",
                    "Wash and dry it just as the garment will be, as hot as it ever will be.",
                    "Let it lie dry and flat overnight, smooth it by hand without ironing, and measure every pair again.",
                    "Wash and measure again until the last wash changes nothing: the total is what must be bought for."),
            List.of(
                    "A new dye may run: wash it by itself or with old cloth of its colour.",
                    "Wool felts in a machine without limit; waxed and coated cloth is not washed at all.",
                    "Hot water, steam and irons scald: keep children away and follow the label of the cloth.",
                    "A pen can bleed through; try it on a corner."),
            List.of("iso-3759-marks", "shrinkage-methods", "iso-6330-2012", "nist-student-t", "project-swatch"));

    private static final Measuring STACK = new Measuring(
            "stack",
            "Thickness",
            List.of(Property.THICKNESS_MM.field()),
            List.of("ten layers or more", "flat weight: 200 g on 4 x 5 cm presses with 1 kPa", "calliper or ruler"),
            List.of(
                    "Lay the layers flat on a hard table, smooth, none folded.",
                    "Set the weight down without a knock and wait half a minute.",
                    "Read how high its lower face stands above the table, at two opposite corners, and take the mean."),
            List.of(
                    "Keep fingers and feet from under a heavy weight.",
                    "Cloth with a raised face is thinner under more weight: tell mass and area truly."),
            List.of("iso-5084", "project-swatch"));

    private static final Measuring WIND = new Measuring(
            "wind",
            "Air permeability beside another cloth",
            List.of(Property.AIR_PERMEABILITY_MM_S.field()),
            List.of(
                    "large bag of film with one opening, and a ring to stretch cloth over it",
                    "board of known mass and size: 500 g on 20 x 20 cm gives 123 Pa",
                    "stopwatch",
                    "cloth of which the air permeability was measured or declared"),
            List.of(
                    "Close the opening with film first: under the board the bag must stay full for minutes, or mend it.",
                    "Fill the bag with room air, stretch the known cloth over the opening, lay the board on, and time it from"
                            + " a mark to a mark; three times.",
                    "Do the same with your cloth, the same marks, the same board, the same opening.",
                    "Choose board and opening so that each time is 10 s or longer: a watch in the hand is off by half a"
                            + " second."),
            List.of(
                    "Film over a face suffocates: keep bags and film from children and animals, never breathe into them.",
                    "The result is a comparison with a wide interval, not a test of ISO 9237, and says nothing of how cloth"
                            + " stops sparks or fire."),
            List.of("project-swatch"));

    private static final Measuring DRIP = new Measuring(
            "drip",
            "How it takes a drop of water",
            List.of(),
            List.of("embroidery hoop", "dropper", "clean water at room temperature", "stopwatch"),
            List.of(
                    "Stretch the cloth in the hoop without a wrinkle, its outer face up.",
                    "Let one drop fall from 1 cm and look along it against a window.",
                    "Stop the watch when the last of the shine is gone; after a minute write 60.",
                    "Do it with five drops in five places."),
            List.of(
                    "It is an observation of one face on one day; finishes wear and wash out.",
                    "A cloth that holds off a drop can still let rain through."),
            List.of("aatcc-79"));

    /** All measurements, those that most makers need first. */
    public static final List<Measuring> ALL = List.of(WASHED, WEIGHED, STACK, WIND, DRIP);

    private SwatchGuide() {}
}
