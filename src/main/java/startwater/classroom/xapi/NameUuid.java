package startwater.classroom.xapi;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/** UUIDs that follow from a name: version 5 of RFC 4122, section 4.3. The same name gives the same UUID everywhere. */
public final class NameUuid {
    private static final int VERSION = 0x50;
    private static final int VARIANT = 0x80;

    private NameUuid() {}

    /** The UUID of a name within a space of names. */
    public static UUID of(UUID space, String name) {
        byte[] hash = sha1(
                ByteBuffer.allocate(2 * Long.BYTES)
                        .putLong(space.getMostSignificantBits())
                        .putLong(space.getLeastSignificantBits())
                        .array(),
                name.getBytes(StandardCharsets.UTF_8));
        hash[6] = (byte) ((hash[6] & 0x0f) | VERSION);
        hash[8] = (byte) ((hash[8] & 0x3f) | VARIANT);
        ByteBuffer bytes = ByteBuffer.wrap(hash);
        return new UUID(bytes.getLong(), bytes.getLong());
    }

    private static byte[] sha1(byte[] space, byte[] name) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-1");
            digest.update(space);
            return digest.digest(name);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-1", e);
        }
    }
}
