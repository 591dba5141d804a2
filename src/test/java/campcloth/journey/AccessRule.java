package campcloth.journey;

import campcloth.access.Role;

/** The rules that the tables of {@code access/} name: who may do it with whose thing. */
enum AccessRule {
    /** Everybody, logged in or not. */
    ANYBODY {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return Answer.DONE;
        }
    },
    /** Whoever is logged in; whose, makes no difference. */
    LOGGED_IN {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return who.isStranger() ? Answer.LOGIN : Answer.DONE;
        }
    },
    /** Makes something of one's own. */
    MAKER {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return needs(Role.MAKER, who);
        }
    },
    KEEPER {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return needs(Role.KEEPER, who);
        }
    },
    /** The accounts: whatever an administrator asks for, and nothing for others. */
    ADMINISTRATOR {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            Answer may = needs(Role.ADMINISTRATOR, who);
            return may == Answer.DONE && whose == Whose.NOWHERE ? Answer.MISSING : may;
        }
    },
    /** Reads what is one's own, common or shared; strangers what is shared, by its address. */
    READ {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            if (who.isStranger()) {
                return switch (whose) {
                    case SHARED_WITH_ITS_KEY -> Answer.DONE;
                    case PRIVATE_WITH_A_STRANGE_KEY -> Answer.MISSING;
                    default -> Answer.LOGIN;
                };
            }
            return there(whose);
        }
    },
    /** Asks a question about what one may read; strangers ask none. */
    ASK_ABOUT {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return who.isStranger() ? Answer.LOGIN : there(whose);
        }
    },
    /** Makes something of one's own of what one may read. */
    MAKE_FROM {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            Answer asked = ASK_ABOUT.of(who, whose, kind);
            return asked == Answer.DONE ? needs(Role.MAKER, who) : asked;
        }
    },
    /** One's own alone; nothing shares it. */
    OWN {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            if (who.isStranger()) {
                return Answer.LOGIN;
            }
            return whose == Whose.OWN ? Answer.DONE : Answer.MISSING;
        }
    },
    /** Changes, removes, shares: who owns it, or keeps what is common of the kind. */
    CHANGE {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            if (who.isStranger()) {
                return Answer.LOGIN;
            }
            return switch (whose) {
                case OWN -> Answer.DONE;
                case COMMON -> needs(kind.keeper(), who);
                case SHARED_WITH_ITS_KEY -> Answer.FORBIDDEN;
                default -> Answer.MISSING;
            };
        }
    },
    /** The same, and a marshal changes the rules of an event whose link was given to them. */
    CHANGE_RULES {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            boolean isGiven = whose == Whose.SHARED_WITH_ITS_KEY && who.is(Role.MARSHAL);
            return isGiven ? Answer.DONE : CHANGE.of(who, whose, kind);
        }
    },
    /** Makes one's own common, as one who keeps what is common; what is common stays so. */
    HAND_OVER {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            if (whose == Whose.COMMON) {
                return LOGGED_IN.of(who, whose, kind);
            }
            Answer change = CHANGE.of(who, whose, kind);
            return change == Answer.DONE ? needs(kind.keeper(), who) : change;
        }
    },
    /** Opens a form in which a thing is changed or removed. */
    FORM_TO_CHANGE {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return formOf(who, whose, kind, CHANGE);
        }
    },
    FORM_TO_CHANGE_RULES {
        @Override
        Answer of(Knocker who, Whose whose, KeptThings.Kind kind) {
            return formOf(who, whose, kind, CHANGE_RULES);
        }
    };

    /** What is answered. */
    enum Answer {
        DONE,
        LOGIN,
        FORBIDDEN,
        MISSING
    }

    abstract Answer of(Knocker who, Whose whose, KeptThings.Kind kind);

    private static Answer needs(Role role, Knocker who) {
        if (who.isStranger()) {
            return Answer.LOGIN;
        }
        return who.is(role) ? Answer.DONE : Answer.FORBIDDEN;
    }

    /** Strangers with the link read, so they are told that they may not; without it they are asked to log in. */
    private static Answer formOf(Knocker who, Whose whose, KeptThings.Kind kind, AccessRule change) {
        Answer read = READ.of(who, whose, kind);
        return who.isStranger() && read == Answer.DONE
                ? Answer.FORBIDDEN
                : who.isStranger() ? read : change.of(who, whose, kind);
    }

    private static Answer there(Whose whose) {
        return whose.isThere() ? Answer.DONE : Answer.MISSING;
    }
}
