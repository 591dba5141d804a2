package campcloth.pages.accounts;

import org.jspecify.annotations.Nullable;

/** A token to be made. */
public class TokenForm {

    public @Nullable String name;

    public @Nullable Integer days = 90;
}
