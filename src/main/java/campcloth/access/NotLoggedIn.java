package campcloth.access;

/** Only who is logged in may ask this. */
public final class NotLoggedIn extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final boolean wrongToken;

    /** @param wrongToken whether a token was shown that is none, or none any more */
    public NotLoggedIn(boolean wrongToken) {
        super(
                wrongToken
                        ? "The token is not one of this service, has run out or was revoked; make another under My account."
                        : "Send a token as Authorization: Bearer; tokens are made under My account.");
        this.wrongToken = wrongToken;
    }

    public boolean isWrongToken() {
        return wrongToken;
    }
}
