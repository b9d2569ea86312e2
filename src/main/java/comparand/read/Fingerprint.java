package comparand.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of a file, in hexadecimal digits. */
public final class Fingerprint {

    private Fingerprint() {}

    static String of(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** Of a file of any size. */
    public static String of(Path path) throws IOException {
        var sha = sha256();
        var buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(path)) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                sha.update(buffer, 0, n);
            }
        }
        return HexFormat.of().formatHex(sha.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
