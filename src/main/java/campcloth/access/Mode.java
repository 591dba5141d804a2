package campcloth.access;

import java.util.Arrays;
import java.util.Optional;

/** For whom the service runs. */
public enum Mode {
    /** For one person on one machine: nobody logs in, and nobody else can reach it. */
    LOCAL,
    /** For many, over a network: whoever wants more than what is shared by a link logs in. */
    HOSTED;

    /** Name of the setting. */
    public static final String SETTING = "campcloth.mode";

    /** The mode that a setting names; local where it is left empty, nothing where it names none. */
    public static Optional<Mode> named(String setting) {
        if (setting.isEmpty()) {
            return Optional.of(LOCAL);
        }
        return Arrays.stream(values())
                .filter(mode -> mode.name().equalsIgnoreCase(setting))
                .findFirst();
    }
}
