package campcloth.rest;

import campcloth.figure.Words;

/** The address names something that is not there. */
final class Missing extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Missing(String kind, String id) {
        super("There is no " + kind + " " + Words.quoted(id) + ".");
    }
}
