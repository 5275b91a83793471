package startwater.content;

import java.util.List;

/**
 * Whether a text is easy enough for a new hand on a farm: R15 and R16.
 *
 * @param language language of the texts
 * @param mostGrade highest school grade, English
 */
record PlainWords(String language, double mostGrade) {
    /** Most words of a sentence. */
    static final int MOST_WORDS = 14;
    /** Least INFLESZ of a Spanish text: fairly easy. */
    static final double LEAST_INFLESZ = 65;

    private static final double DRILL_GRADE = 5;
    private static final double LESSON_GRADE = 6;
    /** Scores of shorter texts say nothing. */
    private static final int FEWEST_WORDS = 8;

    private static final int SHOWN_WORDS = 4;

    static PlainWords forDrills(String language) {
        return new PlainWords(language, DRILL_GRADE);
    }

    static PlainWords forLessons(String language) {
        return new PlainWords(language, LESSON_GRADE);
    }

    /** Notes what is hard in a text. @param key the name of the text for the sentence of a fault */
    void check(String text, String key, int line, Faults faults) {
        FinishedText.check(text, key, line, faults);
        for (String sentence : Readability.sentences(text)) {
            List<String> words = Readability.words(sentence);
            if (words.size() > MOST_WORDS) {
                String start = String.join(" ", words.subList(0, SHOWN_WORDS));
                faults.add(
                        line,
                        Complaint.LONG_SENTENCE,
                        "key",
                        key,
                        "count",
                        words.size(),
                        "most",
                        MOST_WORDS,
                        "start",
                        start);
            }
        }
        Readability count = Readability.of(text, language);
        if (count.words() < FEWEST_WORDS) {
            return;
        }
        if (language.equals(Languages.SPANISH)) {
            if (count.inflesz() < LEAST_INFLESZ) {
                faults.add(
                        line,
                        Complaint.HARD_SPANISH,
                        "key",
                        key,
                        "score",
                        oneDecimal(count.inflesz()),
                        "least",
                        LEAST_INFLESZ);
            }
        } else if (count.fleschKincaidGrade() > mostGrade) {
            faults.add(
                    line,
                    Complaint.HARD_ENGLISH,
                    "key",
                    key,
                    "grade",
                    oneDecimal(count.fleschKincaidGrade()),
                    "most",
                    mostGrade);
        }
    }

    /** Rounded away from the limit's side of the decimal, so that a sentence never says "5, at most 5". */
    private double oneDecimal(double value) {
        double tenths = value * 10;
        return (language.equals(Languages.SPANISH) ? StrictMath.floor(tenths) : StrictMath.ceil(tenths)) / 10;
    }
}
