package campcloth.access;

import java.util.UUID;

/** What was made while the service had no accounts. */
public interface Inheritance {

    /** Leaves all of it to an account; what the demo put in and the shared catalogue stay common. */
    void leaveTo(UUID account);
}
