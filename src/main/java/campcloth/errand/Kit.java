package campcloth.errand;

import java.util.ArrayList;
import java.util.List;

/** What to have at hand for an errand, by its cloth and by how it is sewn. Common practice, no source. */
final class Kit {

    private Kit() {}

    static List<KitItem> items(CutErrand cut) {
        List<KitItem> kit = new ArrayList<>();
        addCutting(kit);
        addPins(cut, kit);
        if (cut.byHand()) {
            kit.add(new KitItem("Hand needles and a thimble", "For seams and hems."));
        } else {
            kit.add(new KitItem(
                    "Sewing machine, cleaned and oiled", "Try stitch and tension on a scrap in two layers."));
            kit.add(new KitItem("A hand needle", "For what the machine does not reach, and for buttons."));
        }
        addPressing(cut, kit);
        return kit;
    }

    private static void addCutting(List<KitItem> kit) {
        kit.add(new KitItem("Shears kept for cloth", "Paper and wire blunt them."));
        kit.add(new KitItem("Small scissors or an unpicker", "For threads, for clipping, and to undo."));
        kit.add(new KitItem("Tape measure", "For the wearer and the cloth."));
        kit.add(new KitItem(
                "A long ruler and a right angle", "For the straight edges of the pieces and the cut ends."));
        kit.add(new KitItem("Chalk, or a marker that washes out", "Try it on a scrap first."));
        kit.add(new KitItem("Paper", "For curved pieces, and to label what is cut."));
    }

    private static void addPins(CutErrand cut, List<KitItem> kit) {
        if (cut.isClosed()) {
            kit.add(new KitItem(
                    "Clips", "Coated and waxed cloth keeps every hole: pin inside the seam allowances only."));
        } else {
            kit.add(new KitItem(
                    cut.sewn().isBulky() ? "Long pins" : cut.sewn().isFine() ? "Fine pins" : "Pins",
                    "Count them before and after."));
        }
    }

    private static void addPressing(CutErrand cut, List<KitItem> kit) {
        if (cut.isClosed()) {
            kit.add(new KitItem(
                    "A seam roller or the back of a spoon", "No iron and no steam on coated and waxed cloth."));
            return;
        }
        if (cut.sewn().hasPile()) {
            kit.add(new KitItem(
                    "Iron with steam and a thick towel", "Steam from the back, pile down; never press it."));
            return;
        }
        kit.add(new KitItem("Iron", heat(cut)));
        kit.add(new KitItem(
                "Pressing cloth",
                cut.sewn().isWool() ? "Wool is pressed under a damp cloth." : "Against shine and scorch."));
    }

    private static String heat(CutErrand cut) {
        return cut.melts()
                ? "Cool: part of the cloth melts, or may. Try it on a scrap."
                : "Try its heat on a scrap; press each seam before the next crosses it.";
    }
}
