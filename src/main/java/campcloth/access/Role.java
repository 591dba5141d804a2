package campcloth.access;

/** What an account may do besides asking for advice. */
public enum Role {
    /** Keeps things of its own: cloths, swatches, events, plans, sheets. */
    MAKER,
    /** Keeps the shared catalogue: its cloths, their swatches, suppliers' lists. */
    KEEPER,
    /** Keeps the rules of common events, and of events that are shared with it by link. */
    MARSHAL,
    /** Keeps the accounts; reads no private thing of others. */
    ADMINISTRATOR
}
