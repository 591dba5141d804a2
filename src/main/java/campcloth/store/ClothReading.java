package campcloth.store;

/** How the words of a search are looked for. */
enum ClothReading {
    /** No text was given. */
    EVERY("true", "name, cloth_id"),
    /** A text without any word in it: nothing can be found by it. */
    NONE("false", "name, cloth_id"),
    /** Each cloth found has all the words. */
    ALL_WORDS("words @@ cast(:query as tsquery)", """
            (name = :said) desc, ts_rank(words, cast(:query as tsquery)) desc, similarity(name, :said) desc, name,
            cloth_id"""),
    /** The names that are most alike, the nearest first. */
    NEARLY("cloth_id = any(cast(:nearest as text[]))", "array_position(cast(:nearest as text[]), cloth_id)");

    private final String condition;
    private final String order;

    ClothReading(String condition, String order) {
        this.condition = condition;
        this.order = order;
    }

    String condition() {
        return condition;
    }

    /** Best first. */
    String order() {
        return order;
    }
}
