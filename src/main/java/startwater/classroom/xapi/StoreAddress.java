package startwater.classroom.xapi;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import java.util.Set;

/**
 * A learning record store that the teacher named.
 *
 * @param statements where statements are posted
 * @param authorization value of the header of that name
 */
public record StoreAddress(URI statements, String authorization) {
    private static final Set<String> THIS_COMPUTER = Set.of("localhost", "127.0.0.1", "[::1]", "::1");
    private static final String RESOURCE = "/statements";

    /** Why an address or a key cannot be used. */
    public enum Refusal {
        /** Not an absolute address of a host. */
        NO_ADDRESS,
        /** Plain http to another computer would show key and data to everybody on the way. */
        PLAIN_HTTP,
        /** A name or key within the address would end up in logs. */
        KEY_IN_ADDRESS,
        /** The key is not of the form name:secret, in plain printable characters. */
        BAD_KEY
    }

    /** An address or key that cannot be used. */
    public static final class RefusedException extends Exception {
        private static final long serialVersionUID = 1;
        private final Refusal refusal;

        RefusedException(Refusal refusal) {
            super(refusal.name());
            this.refusal = refusal;
        }

        public Refusal refusal() {
            return refusal;
        }
    }

    /**
     * A store with basic authentication.
     *
     * @param address of the store as its maker gives it, with or without {@code /statements} at its end
     * @param key {@code name:secret}
     * @throws RefusedException where one of them cannot be used
     */
    public static StoreAddress of(String address, String key) throws RefusedException {
        URI uri = uri(address.strip());
        String trimmed = key.strip();
        int colon = trimmed.indexOf(':');
        boolean printable = trimmed.chars().allMatch(c -> c > ' ' && c < 0x7f);
        if (colon < 1 || colon == trimmed.length() - 1 || !printable) {
            throw new RefusedException(Refusal.BAD_KEY);
        }
        String coded = Base64.getEncoder().encodeToString(trimmed.getBytes(StandardCharsets.UTF_8));
        return new StoreAddress(uri, "Basic " + coded);
    }

    private static URI uri(String address) throws RefusedException {
        URI uri;
        try {
            uri = new URI(address);
        } catch (URISyntaxException e) {
            throw new RefusedException(Refusal.NO_ADDRESS);
        }
        String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
        if (uri.getHost() == null
                || uri.getRawQuery() != null
                || uri.getRawFragment() != null
                || !(scheme.equals("https") || scheme.equals("http"))) {
            throw new RefusedException(Refusal.NO_ADDRESS);
        }
        if (uri.getRawUserInfo() != null) {
            throw new RefusedException(Refusal.KEY_IN_ADDRESS);
        }
        if (scheme.equals("http") && !THIS_COMPUTER.contains(uri.getHost().toLowerCase(Locale.ROOT))) {
            throw new RefusedException(Refusal.PLAIN_HTTP);
        }
        String bare = address.replaceFirst("/+$", "");
        return URI.create(bare.endsWith(RESOURCE) ? bare : bare + RESOURCE);
    }

    /** Without the key: this may be printed. */
    @Override
    public String toString() {
        return statements.toString();
    }
}
