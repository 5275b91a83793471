package startwater.content;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What must not stand in a text that learners read: something left to fill in, or a reading told by a colour. */
final class FinishedText {
    private static final Pattern PLACEHOLDER =
            Pattern.compile("[{}]|\\b(?:TODO|FIXME|TBD|XX+)\\b|\\?\\?\\?|\\.{4,}|_{3,}|(?i:lorem ipsum)");
    private static final Set<String> READ_FROM = Set.of(
            "strip", "strips", "pad", "pads", "block", "blocks", "tira", "tiras", "zona", "zonas", "bloque", "bloques");
    private static final Set<String> COLOURS = Set.of(
            "red",
            "orange",
            "yellow",
            "green",
            "blue",
            "purple",
            "violet",
            "pink",
            "white",
            "rojo",
            "roja",
            "naranja",
            "amarillo",
            "amarilla",
            "verde",
            "azul",
            "morado",
            "morada",
            "violeta",
            "rosa",
            "rosado",
            "rosada",
            "blanco",
            "blanca");

    private FinishedText() {}

    /** Notes what is unfinished or told by a colour. @param key the name of the text for the sentence of a fault */
    static void check(String text, String key, int line, Faults faults) {
        Matcher matcher = PLACEHOLDER.matcher(text);
        if (matcher.find()) {
            faults.add(line, Complaint.PLACEHOLDER, "key", key, "value", matcher.group());
        }
        for (String sentence : Readability.sentences(text)) {
            colour(sentence).ifPresent(colour -> faults.add(line, Complaint.COLOUR, "key", key, "value", colour));
        }
    }

    private static Optional<String> colour(String sentence) {
        java.util.List<String> words = Readability.words(sentence).stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .toList();
        return words.stream().anyMatch(READ_FROM::contains)
                ? words.stream().filter(COLOURS::contains).findFirst()
                : Optional.empty();
    }
}
