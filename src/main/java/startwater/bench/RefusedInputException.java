package startwater.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A sum was asked with something that cannot be. Holds the reason and its numbers; the words are in the language files. */
public final class RefusedInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int FIGURES = 8;

    /** Why; each has the key {@code refusal.<name>}. */
    public enum Reason {
        MISSING,
        NOT_A_NUMBER,
        NOT_WHOLE,
        OUTSIDE,
        OUTSIDE_ABOVE,
        TARGET_NOT_BETWEEN,
        TARGET_UNDER_NOW,
        UNKNOWN_CHOICE,
        NO_SUCH_WATER,
        ENDS_BEYOND_PH,
        MORE_THAN_IT_HOLDS;

        String key() {
            return "refusal." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final String input;
    private final Reason reason;
    private final transient List<Measure> numbers;
    private final String text;

    /**
     * @param input name of the input at fault
     * @param reason why it is refused
     * @param numbers what the sentence needs, by name; the first is also {@code {value}}
     */
    public RefusedInputException(String input, Reason reason, Measure... numbers) {
        super(input + ": " + reason + " " + List.of(numbers));
        this.input = input;
        this.reason = reason;
        this.numbers = List.of(numbers);
        this.text = "";
    }

    /** For an input that is not a number at all: {@code given} is what was typed, {@code allowed} what may be. */
    public RefusedInputException(String input, Reason reason, String given, List<String> allowed) {
        super(input + ": " + reason + " '" + given + "' " + allowed);
        this.input = input;
        this.reason = reason;
        this.numbers = List.of();
        this.text = given + "\n" + String.join(", ", allowed);
    }

    /** Name of the input at fault. */
    public String input() {
        return input;
    }

    public Reason reason() {
        return reason;
    }

    /** What is wrong and what to do, in the reader's words and units. */
    public String say(Words words, UnitSystem system) {
        Map<String, String> filled = new LinkedHashMap<>();
        if (!numbers.isEmpty()) {
            filled.put("value", words.amount(numbers.get(0).in(system), FIGURES));
        }
        for (Measure number : numbers) {
            filled.put(number.name(), words.amount(number.in(system), FIGURES));
        }
        if (!text.isEmpty()) {
            int end = text.indexOf('\n');
            filled.put("value", text.substring(0, end));
            filled.put("allowed", text.substring(end + 1));
        }
        return words.text(reason.key(), filled);
    }
}
