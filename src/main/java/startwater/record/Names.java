package startwater.record;

import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.zip.CRC32;

/** Names of the files of a learner. */
final class Names {
    static final String ENDING = ".jsonl";
    private static final String GRADED = ".graded.jsonl";
    private static final int LONGEST_KEY = 40;
    /** Names that Windows keeps for devices. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

    private Names() {}

    /** The key of one who goes on without a name. */
    static final String NAMELESS = "learner";

    /** A key for a name: small letters, digits and hyphens, safe as a file name everywhere. */
    static String key(String name) {
        String plain = Normalizer.normalize(name.strip(), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String cut = plain.length() > LONGEST_KEY ? plain.substring(0, LONGEST_KEY) : plain;
        if (name.isBlank()) {
            return NAMELESS;
        }
        if (cut.isEmpty() || DEVICES.contains(cut) || cut.matches("(com|lpt)\\d")) {
            CRC32 crc = new CRC32();
            crc.update(name.strip().getBytes(java.nio.charset.StandardCharsets.UTF_8));
            return NAMELESS + "-" + Long.toHexString(crc.getValue());
        }
        return cut.equals(NAMELESS) ? cut + "-1" : cut;
    }

    static boolean isLearner(Path file) {
        String name = Objects.requireNonNull(file.getFileName()).toString();
        return name.endsWith(ENDING) && !name.endsWith(GRADED);
    }

    static String keyOf(Path file) {
        String name = Objects.requireNonNull(file.getFileName()).toString();
        return name.substring(0, name.length() - ENDING.length());
    }

    static Path file(Path folder, String key) {
        return folder.resolve(key + ENDING);
    }

    static Path index(Path file) {
        return file.resolveSibling(keyOf(file) + ".index.json");
    }

    static Path graded(Path file) {
        return file.resolveSibling(keyOf(file) + GRADED);
    }

    static Path lock(Path file) {
        return file.resolveSibling(keyOf(file) + ".lock");
    }

    /** The first free name for an unreadable part. */
    static Path damaged(Path file) {
        for (int n = 1; ; n++) {
            Path part = file.resolveSibling(keyOf(file) + ENDING + ".damaged-" + n);
            if (!Files.exists(part)) {
                return part;
            }
        }
    }

    /** Whether a file beside belongs to a learner's file: made from it, or broken off it. */
    static boolean belongs(Path file, Path other) {
        String name = Objects.requireNonNull(other.getFileName()).toString();
        return List.of(index(file), graded(file), file, index(file).resolveSibling(keyOf(file) + ".index.json.new"))
                        .stream()
                        .anyMatch(f -> Objects.requireNonNull(f.getFileName())
                                .toString()
                                .equals(name))
                || name.startsWith(keyOf(file) + ENDING + ".damaged-");
    }
}
