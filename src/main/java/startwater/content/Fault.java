package startwater.content;

import java.util.Comparator;
import java.util.Map;

/**
 * One broken rule in one place. The sentence is made when it is shown, in the reader's language.
 *
 * @param file the file as it was named to the reader
 * @param line line in the file, counted from 1; also 1 where the file as a whole is meant
 * @param complaint what is wrong
 * @param values what fills the sentence's placeholders
 */
public record Fault(String file, int line, Complaint complaint, Map<String, String> values) {
    /** By file, then line, then rule. */
    public static final Comparator<Fault> IN_ORDER =
            Comparator.comparing(Fault::file).thenComparingInt(Fault::line).thenComparing(Fault::complaint);

    /** @throws IllegalArgumentException when the values are not those the sentence needs */
    public Fault {
        values = Map.copyOf(values);
        if (!values.keySet().equals(complaint.placeholders())) {
            throw new IllegalArgumentException(complaint + " needs " + complaint.placeholders() + ", not " + values);
        }
    }

    /** The broken rule's id, for example {@code R07}. */
    public String ruleId() {
        return complaint.rule().name();
    }

    /** What is wrong and what to do. @param language {@code en} or {@code es} */
    public String sentence(String language) {
        return Phrases.of(language).say(complaint.key(), values);
    }

    /** One line: {@code file:line: R07 sentence}. @param language {@code en} or {@code es} */
    public String line(String language) {
        return Shown.safe(file) + ":" + line + ": " + ruleId() + " " + sentence(language);
    }

    @Override
    public String toString() {
        return line("en");
    }
}
