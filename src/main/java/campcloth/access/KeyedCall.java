package campcloth.access;

/**
 * A call that makes something, with the key by which it is known again.
 *
 * @param asker who asks; keys of different askers have nothing to do with each other
 * @param operation what is called
 * @param fingerprint tells what was sent from anything else that might be sent
 */
public record KeyedCall(Asker asker, String operation, String key, String fingerprint) {}
