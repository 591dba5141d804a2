package campcloth.journey;

/** Whose a thing is that somebody asks for, and whether the key of a link is shown with the question. */
enum Whose {
    OWN,
    PRIVATE,
    /** Another's private thing, asked for with the key of some other thing. */
    PRIVATE_WITH_A_STRANGE_KEY,
    SHARED_WITH_ITS_KEY,
    SHARED_WITHOUT_KEY,
    COMMON,
    /** There is no such thing. */
    NOWHERE;

    boolean isAnothers() {
        return this != OWN && this != COMMON && this != NOWHERE;
    }

    boolean isShared() {
        return this == SHARED_WITH_ITS_KEY || this == SHARED_WITHOUT_KEY;
    }

    /** Whether anything is there for somebody who is logged in. */
    boolean isThere() {
        return this == OWN || this == SHARED_WITH_ITS_KEY || this == COMMON;
    }
}
