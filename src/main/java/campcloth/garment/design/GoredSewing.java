package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.LengthRule;
import campcloth.garment.Opening;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.SeamRoom;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.SewnCloth;
import campcloth.garment.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Seams, hems and what to know of a gored skirt. Lengths along the finished seam lines. */
final class GoredSewing {

    /** Project choice: what a waist must have over the hip to pass it. */
    private static final double PASS_EASE_CM = 2;

    private GoredSewing() {}

    static Garment garment(SkirtSizes sizes, GoredChoice choice, SewnCloth cloth) {
        FlaredStrip gore = GoredCut.gore(sizes, choice);
        Hem hem = HemRules.hem(
                new HemEdge(
                        HemEdge.Kind.BODY,
                        choice.sweepCm(),
                        sizes.lengthCm(),
                        choice.sweepCm() / choice.gores(),
                        gore.hemTangent(),
                        choice.hemCm()),
                cloth);
        GoredCut cut = new GoredCut(sizes, choice, cloth, hem);
        Opening waist =
                Opening.ofTube("waist", choice.topCm(sizes), choice.placketCm(), sizes.bodyHipCm(), PASS_EASE_CM);
        double hipEaseCm = sizes.hipCm() - sizes.bodyHipCm();
        SeamRoom sides = SeamRoom.round(
                "seams between the gores",
                "the hip",
                choice.gores(),
                cut.seamAllowanceCm(),
                hipEaseCm,
                SkirtSizes.LEAST_EASE_CM);
        return new Garment(
                "gored-skirt",
                cut.pieces(),
                cut.smallPieces(),
                new Sewing(
                        seams(sizes, choice, gore, cut, cloth),
                        List.of(hem),
                        cut.seamAllowanceCm(),
                        steps(choice),
                        notions(sizes, choice)),
                new Fitting(Optional.of(waist), List.of(sides)),
                new LengthRule(choice.gores(), cut.pieces().get(0).outline().widthCm(), sizes.lengthCm(), 0),
                List.of(new Saving(SkirtSizes.LENGTH.key(), "skirt", Saving.Kind.SHORTER, sizes.lengthCm())),
                notes(sizes, choice, hem),
                cautions(waist));
    }

    private static List<Seam> seams(
            SkirtSizes sizes, GoredChoice choice, FlaredStrip gore, GoredCut cut, SewnCloth cloth) {
        List<Seam> seams = new ArrayList<>();
        seams.add(Seam.pressedOpen("between the gores", choice.gores() * gore.sideCm() - choice.placketCm(), cloth));
        if (choice.drawstring()) {
            seams.add(new Seam("casing", choice.topCm(sizes), Stitch.LOCK_301, 0));
            return seams;
        }
        seams.add(new Seam("waistband to skirt", sizes.waistCm(), Stitch.LOCK_301, 0));
        seams.add(new Seam(
                "waistband, inner edge and ends", cut.bandLengthCm() + 2 * choice.bandCm(), Stitch.LOCK_301, 0));
        if (choice.placketCm() > 0) {
            seams.add(new Seam("placket", 4 * choice.placketCm(), Stitch.LOCK_301, 0));
        }
        return seams;
    }

    /** Common practice, no source. */
    private static List<SewingStep> steps(GoredChoice choice) {
        List<SewingStep> steps = new ArrayList<>();
        steps.add(SewingStep.of(
                SewingStage.MARKING, "Mark the top of every gore: on cloth without nap they may lie head to tail."));
        steps.add(SewingStep.seams(
                SewingStage.BODY,
                "Join the gores from the top down"
                        + (choice.placketCm() > 0
                                ? ", leaving " + Words.number(choice.placketCm()) + " cm of one seam open at the top."
                                : "."),
                "between the gores"));
        steps.add(SewingStep.of(
                SewingStage.FITTING,
                "Try it on inside out, pin in or let out at waist and hip, then press the seams open."));
        if (choice.drawstring()) {
            steps.add(SewingStep.seams(
                    SewingStage.BANDS,
                    "Fold the top twice, " + Words.number(GoredCut.CASING_CM)
                            + " cm deep, stitch the casing with a gap at the front and draw the cord through.",
                    "casing"));
        } else {
            if (choice.placketCm() > 0) {
                steps.add(SewingStep.seams(SewingStage.EDGES, "Bind the opening with the placket facing.", "placket"));
            }
            steps.add(SewingStep.seams(
                    SewingStage.BANDS,
                    "Sew the waistband on, fold it over, close it inside and sew on hooks or buttons.",
                    "waistband to skirt",
                    "waistband, inner edge and ends"));
        }
        steps.add(SewingStep.hems(
                SewingStage.HEMS,
                "Let it hang a day from the waist, level the hem from the ground up and hem it.",
                HemEdge.Kind.BODY));
        return steps;
    }

    private static List<String> notions(SkirtSizes sizes, GoredChoice choice) {
        return choice.drawstring()
                ? List.of("1 cord, " + Words.fixed(sizes.hipCm() + 50, 0) + " cm")
                : List.of("2 hooks and eyes, or 2 buttons");
    }

    private static List<String> notes(SkirtSizes sizes, GoredChoice choice, Hem hem) {
        List<String> notes = new ArrayList<>(sizes.notes());
        double wantedCm = sizes.strideCm();
        String sweep = "The hem is " + Words.number(choice.sweepCm()) + " cm round: ";
        notes.add(
                choice.sweepCm() >= wantedCm
                        ? sweep + "room enough to stride."
                        : sweep + "narrow for a full stride at this length, where about " + Words.fixed(wantedCm, 0)
                                + " cm are usual; give that as " + GoredSkirt.SWEEP.key()
                                + ", or leave a seam open below.");
        notes.add("Each of " + choice.gores() + " gores is "
                + Words.fixed(choice.topCm(sizes) / choice.gores(), 1) + " cm wide at the top and "
                + Words.fixed(choice.sweepCm() / choice.gores(), 1) + " cm at the hem; its seams run off the grain and"
                + " stretch, so sew them downwards without pulling.");
        if (hem.spareCm() > 0) {
            notes.add("The hem's folds leave " + Words.number(hem.spareCm()) + " cm over for levelling.");
        }
        return notes;
    }

    private static List<String> cautions(Opening waist) {
        return waist.passes()
                ? List.of()
                : List.of("The waist opens " + Words.fixed(waist.edgeCm(), 0) + " cm and will hardly pass a hip of "
                        + Words.number(waist.bodyCm()) + " cm: make the placket " + Words.fixed(waist.slitWantedCm(), 0)
                        + " cm long (option " + GoredSkirt.PLACKET.key() + "), or take the drawstring.");
    }
}
