package campcloth.fibre;

import java.util.List;

/** What comes before anybody holds a thread to a flame. */
public final class FlameSafety {

    /** First things first, in sentences. */
    public static final List<String> SAFETY = List.of(
            "This test makes fire, molten drops and poisonous smoke. Do it only where nothing else can catch, or leave it"
                    + " and treat the cloth as unknown.",
            "Rules of the place, of the event and of its fire marshals come first. Never do it at a camp in dry weather or"
                    + " in wind, in a tent, or where open flame is not allowed.",
            "Grown-ups only; children stay away and are never left alone with it.",
            "Tie hair back, roll sleeves up, wear nothing loose, and take cloth, paper, spirits and sprays off the table.",
            "Burn single threads and snippets of about 2 cm, never the cloth or the garment.",
            "Hold them with metal tweezers over a metal or ceramic dish with water or sand in it, with more water at hand.",
            "Work outside or at an open window. Chlorofibre (PVC), modacrylic, acrylic, wool and polyurethane give"
                    + " poisonous gas: waft a little smoke towards you and never breathe it in.",
            "Molten drops stick and burn the skin. Touch a bead only when it is cold, and pour water over what is left.",
            "For a burn: running cool water at once, for 20 minutes, and help where it is large, deep, on face or hands, or"
                    + " a child's.");

    /** How the test is done, in sentences. */
    public static final List<String> INSTRUCTIONS = List.of(
            "Pull threads out of the cloth, warp and weft apart: many cloths have another fibre in each. Pile, stripes and"
                    + " sewing thread are threads of their own.",
            "Untwist a plied thread and burn its parts one by one.",
            "Use a small flame that has no smell of its own, a lighter rather than a candle or a match.",
            "Answer what you saw and leave out what you are not sure of. A wrong answer does more harm than none.",
            "Burn a thread of known cloth beside it and compare.",
            "Do it three times. If the answers change, the thread is likely a blend.");

    private FlameSafety() {}
}
