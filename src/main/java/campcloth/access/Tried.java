package campcloth.access;

/**
 * What wrong passwords in a row are counted under: an account's name for whoever tries it; a browser in which that account had
 * logged in before; the account itself while it changes its password. So whoever keeps trying a name keeps its owner out of new browsers
 * alone. There are no spaces in names, so none of them is another.
 *
 * @param name whose password is tried
 * @param key under which it is counted
 */
public record Tried(AccountName name, String key) {

    /** Anybody anywhere. */
    public static Tried byAnybody(AccountName name) {
        return new Tried(name, name.key());
    }

    static Tried in(KnownBrowser browser, AccountName name) {
        return new Tried(name, name.key() + " " + browser.number());
    }

    /** By whoever is logged in as that account. */
    public static Tried byItself(AccountName name) {
        return new Tried(name, name.key() + " itself");
    }
}
