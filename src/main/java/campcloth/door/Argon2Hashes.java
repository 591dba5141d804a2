package campcloth.door;

import campcloth.access.PasswordHashes;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * Passwords are kept as Argon2id (RFC 9106) with 19 MiB, two passes and one lane, the first choice of the OWASP Password Storage Cheat Sheet;
 * bcrypt would leave out all behind the 72nd byte. Each hash says how it was made, so that the work can be raised: whoever logs in then gets
 * a new one. Two are reckoned at a time, so that many logins at once do not take the memory of everything else.
 */
final class Argon2Hashes implements PasswordHashes {

    static final int MEMORY_KIB = 19 * 1024;
    static final int PASSES = 2;

    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int AT_ONCE = 2;
    private static final String KIND = "argon2";

    private final Semaphore places = new Semaphore(AT_ONCE, true);
    private final PasswordEncoder encoder;
    private final String nobodys;

    Argon2Hashes() {
        this(MEMORY_KIB, PASSES);
    }

    Argon2Hashes(int memoryKib, int passes) {
        this.encoder = new DelegatingPasswordEncoder(
                KIND, Map.of(KIND, new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, memoryKib, passes)));
        this.nobodys = hash("a password that nobody has");
    }

    @Override
    public String hash(String password) {
        return inTurn(() -> String.valueOf(encoder.encode(password)));
    }

    @Override
    public boolean matches(String password, String hash) {
        return inTurn(() -> encoder.matches(password, hash));
    }

    @Override
    public boolean isOutdated(String hash) {
        return encoder.upgradeEncoding(hash);
    }

    @Override
    public String ofNobody() {
        return nobodys;
    }

    private <T> T inTurn(Supplier<T> work) {
        places.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            places.release();
        }
    }
}
