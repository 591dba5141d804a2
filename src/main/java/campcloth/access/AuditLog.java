package campcloth.access;

/**
 * What was changed, by whom and when: changes of rules and of the catalogue, of accounts, and logins that were refused. Who asks and the
 * time are added by the log. A note is kept with the change it is about, or not at all.
 */
public interface AuditLog {

    /**
     * Notes a change, as part of the transaction that makes it.
     *
     * @param action what was done, as a word: made, changed, removed, refused
     * @param thingKind of what kind the thing is: event, rules, cloth, account
     * @param thingId which one
     * @param what the change in a sentence, with nothing of a person in it but the name of an account
     */
    void note(String action, String thingKind, String thingId, String what);
}
