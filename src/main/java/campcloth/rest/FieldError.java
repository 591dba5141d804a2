package campcloth.rest;

import campcloth.figure.Refusal;

/** What is wrong with one field of a request. */
record FieldError(String field, String message) {

    static FieldError of(Refusal refusal) {
        return new FieldError(refusal.field(), refusal.sentence());
    }
}
