package campcloth.door;

import campcloth.access.Logins;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;

/** Hands name and password of the login form to the core, with the mark of the browser that sent them. */
final class PasswordProvider implements AuthenticationProvider {

    private final Logins logins;

    PasswordProvider(Logins logins) {
        this.logins = logins;
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        String mark = asked.getDetails() instanceof String shown ? shown : "";
        Logins.Outcome outcome = logins.tried(asked.getName(), String.valueOf(asked.getCredentials()), mark);
        if (outcome instanceof Logins.Outcome.In in) {
            return new LoggedIn(in.account());
        }
        throw new NotIn(outcome);
    }

    @Override
    public boolean supports(Class<?> kind) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(kind);
    }

    /** Did not get in, and why. */
    static final class NotIn extends AuthenticationException {

        private static final long serialVersionUID = 1L;

        private final transient Logins.Outcome outcome;

        NotIn(Logins.Outcome outcome) {
            super("not logged in");
            this.outcome = outcome;
        }

        Logins.Outcome outcome() {
            return outcome;
        }
    }
}
