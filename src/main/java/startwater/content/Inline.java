package startwater.content;

/** A run of words within a line of prose. */
public sealed interface Inline {
    /** How words are set. */
    enum Style {
        PLAIN,
        EMPHASIS,
        STRONG,
        CODE
    }

    /** Words as they stand. */
    record Words(String text, Style style) implements Inline {}

    /** A number that the tool computes, for example {@code 4.2 %}: shown rounded, with its unit, by the reader's locale. */
    record Computed(String name, double value, String unit, int decimals) implements Inline {}

    /** One answer for each kind of run. */
    interface Cases<T> {
        T words(Words words);

        T computed(Computed number);
    }

    /** Answers by kind. */
    default <T> T match(Cases<T> cases) {
        return this instanceof Words words ? cases.words(words) : cases.computed((Computed) this);
    }
}
