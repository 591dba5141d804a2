package campcloth.store.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Passes bytes on, counts them and makes their digest; what is beneath stays open. */
final class Hashed extends OutputStream {

    private final OutputStream out;
    private final MessageDigest digest = sha256();
    private long bytes;

    Hashed(OutputStream out) {
        this.out = out;
    }

    static String of(byte[] all) {
        return HexFormat.of().formatHex(sha256().digest(all));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] from, int offset, int length) throws IOException {
        out.write(from, offset, length);
        digest.update(from, offset, length);
        bytes += length;
    }

    long bytes() {
        return bytes;
    }

    /** Once all are through. */
    String sha256Hex() {
        return HexFormat.of().formatHex(digest.digest());
    }
}
