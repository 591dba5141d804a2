package campcloth.pages.cloths;

/** The texts of these pages, for what is put together in code. */
@FunctionalInterface
interface Wording {

    /** @param with what the text takes in */
    String of(String key, Object... with);
}
