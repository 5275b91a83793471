package startwater.content;

/**
 * The rules that content keeps, one sentence each. The sentences stand in the language files as {@code rule.R01} and so
 * on; {@code check --rules} lists them. A rule's number is never given to another rule.
 */
public enum Rule {
    /** The file is plain text of bearable size. */
    R01,
    /** It is well-formed YAML. */
    R02,
    /** It is one plain document. */
    R03,
    /** A key stands once. */
    R04,
    /** Keys are known. */
    R05,
    /** Needed keys are there. */
    R06,
    /** Values are of the right kind. */
    R07,
    /** Numbers lie in their range. */
    R08,
    /** Lists have the right length, without repeats. */
    R09,
    /** Names are known. */
    R10,
    /** The schema number is one this program reads. */
    R11,
    /** Ids are in kebab case and equal the file name. */
    R12,
    /** Both languages are there. */
    R13,
    /** Texts fit their place. */
    R14,
    /** Texts are easy to read. */
    R15,
    /** Sentences are short. */
    R16,
    /** Hours of the day rise. */
    R17,
    /** Decision visits. */
    R18,
    /** Absences. */
    R19,
    /** The days before the first visit. */
    R20,
    /** Events. */
    R21,
    /** Fish now or fish to come. */
    R22,
    /** Stock density. */
    R23,
    /** Source water can exist. */
    R24,
    /** Priors stay within sense. */
    R25,
    /** Drill numbers are used once. */
    R26,
    /** The drill plays to its end. */
    R27,
    /** Lesson file names. */
    R28,
    /** Lessons have a front block. */
    R29,
    /** Prose is plain. */
    R30,
    /** Fenced blocks are of a known kind. */
    R31,
    /** Lessons have a twin. */
    R32,
    /** Links to drills are live. */
    R33,
    /** Sums get what they need. */
    R34,
    /** Choices explain themselves. */
    R35,
    /** Sums fade. */
    R36,
    /** Computed values in prose are named. */
    R37,
    /** Play stays within what the equations are published for. */
    R38,
    /** Lessons that come first are there, and never in a circle. */
    R39,
    /** Texts are finished. */
    R40,
    /** Readings are told by number, not by colour. */
    R41;

    /** Key of its sentence in the language files. */
    String key() {
        return "rule." + name();
    }

    /** Its sentence. @param language {@code en} or {@code es} */
    public String sentence(String language) {
        return Phrases.of(language).say(key(), java.util.Map.of());
    }
}
