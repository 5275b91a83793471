package startwater.content;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The note at the head of a drill file: comment lines that name a part, a colon and what it is, for teachers. */
public final class DesignNote {
    private static final Pattern PART = Pattern.compile("([A-Z][a-z ]{2,20}): (.*)");

    private DesignNote() {}

    /** The parts of the note of a drill by name, in order; none where the file has no note. @param idOrPath as for a drill */
    public static Map<String, String> of(String idOrPath) {
        return text(idOrPath).map(DesignNote::parts).orElse(Map.of());
    }

    private static Optional<String> text(String idOrPath) {
        if (idOrPath.endsWith(ScenarioReader.ENDING)) {
            return Optional.ofNullable(Loaded.of(Path.of(idOrPath)).text());
        }
        return PackedFiles.in("scenarios", ScenarioReader.ENDING, "scenarios").stream()
                .filter(file ->
                        FileNames.base(file.file(), ScenarioReader.ENDING).equals(idOrPath))
                .findFirst()
                .flatMap(file -> Optional.ofNullable(file.text()));
    }

    static Map<String, String> parts(String text) {
        Map<String, String> parts = new LinkedHashMap<>();
        String last = "";
        for (String line : text.lines().takeWhile(line -> line.startsWith("#")).toList()) {
            String words = line.substring(1).strip();
            Matcher matcher = PART.matcher(words);
            if (matcher.matches()) {
                last = matcher.group(1);
                parts.put(last, matcher.group(2));
            } else if (!last.isEmpty() && !words.isEmpty()) {
                parts.merge(last, words, (before, more) -> before + " " + more);
            }
        }
        return parts;
    }
}
