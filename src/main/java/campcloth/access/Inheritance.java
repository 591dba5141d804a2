package campcloth.access;

import java.util.UUID;

/** What was made while nobody logged in, belongs to nobody and is private by nature. */
public interface Inheritance {

    /** Leaves all of it to the first account there is, as part of the transaction that makes it. */
    void leaveTo(UUID account);
}
