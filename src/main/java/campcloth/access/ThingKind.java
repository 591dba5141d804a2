package campcloth.access;

import java.util.Locale;

/** The kinds of things that have an owner, and the role that keeps what is common of each. */
public enum ThingKind {
    CLOTH(
            Role.KEEPER,
            true,
            "A cloth is changed by whom it belongs to, one of the shared catalogue by its keepers. Copy it and change your"
                    + " copy, or ask a keeper."),
    EVENT(
            Role.MARSHAL,
            true,
            "An event is changed by whom it belongs to, a common one by marshals. Copy it and change your copy, or ask a"
                    + " marshal."),
    CUTTING_PLAN(
            Role.ADMINISTRATOR,
            false,
            "A cutting plan belongs to who made it. Make one of your own from the same cloth and measurements."),
    SHEET(
            Role.ADMINISTRATOR,
            false,
            "A plan sheet belongs to who made it. Make one of your own for the same event and cloth.");

    private final Role keeper;
    private final boolean canBecomeCommon;
    private final String remedy;

    ThingKind(Role keeper, boolean canBecomeCommon, String remedy) {
        this.keeper = keeper;
        this.canBecomeCommon = canBecomeCommon;
        this.remedy = remedy;
    }

    /** Who may change and share what is common of this kind. */
    public Role keeper() {
        return keeper;
    }

    /** What it is called: "cutting plan". */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether such a thing can be handed over to everybody. */
    boolean canBecomeCommon() {
        return canBecomeCommon;
    }

    /** For somebody who may read a thing and wants to change it. */
    public NotAllowed notChangedByYou() {
        return new NotAllowed(remedy);
    }
}
