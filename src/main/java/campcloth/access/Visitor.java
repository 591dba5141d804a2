package campcloth.access;

import java.util.Optional;

/**
 * Who looks at a page of a hosted service, as its head tells it.
 *
 * @param name of the account; none where nobody is logged in
 * @param administrator whether it keeps the accounts
 */
public record Visitor(Optional<String> name, boolean administrator) {

    public static final Visitor STRANGER = new Visitor(Optional.empty(), false);

    /** Attribute of the request under which it stands; a local service has none. */
    public static final String ATTRIBUTE = Visitor.class.getName();

    public static Visitor of(Account account) {
        return new Visitor(Optional.of(account.name().text()), account.roles().contains(Role.ADMINISTRATOR));
    }
}
