package campcloth.access;

/** How passwords are turned into what is kept of them. */
public interface PasswordHashes {

    String hash(String password);

    boolean matches(String password, String hash);

    /** Whether it was made with less work than is usual by now. */
    boolean isOutdated(String hash);

    /** A hash that no password belongs to; comparing with it takes as long as with any other. */
    String ofNobody();
}
