package campcloth.advice;

/** How far clothing meets what the cold asks for. */
public enum Closes {
    NOT("does not meet the need"),
    /** The heat balance holds, but the wearer is cold: the minimal need of ISO 11079. */
    MINIMAL("just holds the heat balance"),
    /** The wearer feels neutral. */
    NEUTRAL("meets the need");

    private final String words;

    Closes(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
