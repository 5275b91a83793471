package startwater.classroom.xapi;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;

/**
 * The addresses that name drills, lessons, skills and our own fields in statements.
 *
 * @param home start of every address, without a slash at its end; nothing need answer there, but it should be a name the
 *     teacher's house may use
 */
public record Names(String home) {
    /** A name that is nobody's: example.org is kept for examples (RFC 2606). */
    public static final Names USUAL = new Names("https://startwater.example.org");

    /** @throws IllegalArgumentException where the home is no absolute http or https address */
    public Names {
        if (!isHome(home)) {
            throw new IllegalArgumentException("Not an http or https address without query: " + home);
        }
    }

    /** Whether an address can be a home. */
    public static boolean isHome(String home) {
        try {
            URI uri = new URI(home);
            String scheme = uri.getScheme();
            return ("https".equals(scheme) || "http".equals(scheme))
                    && uri.getHost() != null
                    && uri.getRawQuery() == null
                    && uri.getRawFragment() == null
                    && uri.getRawUserInfo() == null
                    && !home.endsWith("/");
        } catch (URISyntaxException e) {
            return false;
        }
    }

    String drill(String id) {
        return home + "/drills/" + part(id);
    }

    String decision(String drill, int number) {
        return drill(drill) + "/decisions/" + number;
    }

    String lesson(String id) {
        return home + "/lessons/" + part(id);
    }

    String skill(String id) {
        return home + "/skills/" + part(id);
    }

    String handout(String id) {
        return home + "/handouts/" + part(id);
    }

    String extension(String name) {
        return home + "/xapi/" + name;
    }

    /** One step of a path: all but plain letters, digits, dots and dashes stands by its bytes. */
    private static String part(String words) {
        StringBuilder out = new StringBuilder();
        for (byte b : words.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xff);
            boolean plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
            if (plain || c == '-' || c == '_' || c == '.') {
                out.append(c);
            } else {
                out.append(String.format("%%%02X", (int) c));
            }
        }
        return out.toString();
    }
}
