package startwater.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * The version of the engine: a mark of everything in this build that decides how a drill plays and is judged, so that what
 * an older build has played is not taken for what this one would. Learner files and kept trials carry it.
 */
public final class EngineVersion {
    private static final List<String> ROOMS =
            List.of("quantity", "water", "biofilter", "fish", "tank", "bench", "strip", "drill", "score");

    private static final String UNREADABLE = "unknown";

    private EngineVersion() {}

    /** Read once: it takes a look at every class of the engine. */
    private static final class Here {
        static final String MARK = mark();

        private static String mark() {
            try {
                return ofThisBuild();
            } catch (IOException unreadable) {
                return UNREADABLE;
            }
        }
    }

    /** The version of the running program, in hexadecimal; {@code unknown} where it cannot read itself. */
    public static String here() {
        return Here.MARK;
    }

    private static String ofThisBuild() throws IOException {
        Path self;
        try {
            self = Path.of(EngineVersion.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (java.net.URISyntaxException e) {
            throw new IOException("the place of the program is not a path", e);
        }
        List<String> parts = Files.isDirectory(self) ? folder(self) : jar(self);
        Collections.sort(parts);
        CRC32 all = new CRC32();
        parts.forEach(part -> all.update(part.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        return Long.toHexString(all.getValue());
    }

    private static List<String> jar(Path file) throws IOException {
        List<String> parts = new ArrayList<>();
        try (JarFile jar = new JarFile(file.toFile())) {
            for (JarEntry entry : Collections.list(jar.entries())) {
                if (counts(entry.getName())) {
                    parts.add(entry.getName() + " " + entry.getCrc());
                }
            }
        }
        return parts;
    }

    private static List<String> folder(Path folder) throws IOException {
        List<String> parts = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).collect(Collectors.toList())) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (counts(name)) {
                    CRC32 crc = new CRC32();
                    crc.update(ByteBuffer.wrap(Files.readAllBytes(file)));
                    parts.add(name + " " + crc.getValue());
                }
            }
        }
        return parts;
    }

    private static boolean counts(String name) {
        return ROOMS.stream().anyMatch(room -> name.startsWith("startwater/" + room + "/"))
                && !name.endsWith(".properties");
    }
}
