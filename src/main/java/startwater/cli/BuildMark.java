package startwater.cli;

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
 * A mark of everything in this build that decides how a drill plays and is judged, so that what an older build has played
 * is not taken for what this one would.
 */
final class BuildMark {
    private static final List<String> ROOMS =
            List.of("quantity", "water", "biofilter", "fish", "tank", "bench", "strip", "drill", "score");

    private BuildMark() {}

    /** The mark of the running build, in hexadecimal. @throws IOException where the program cannot read itself */
    static String ofThisBuild() throws IOException {
        Path self;
        try {
            self = Path.of(BuildMark.class
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
