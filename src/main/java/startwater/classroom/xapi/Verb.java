package startwater.classroom.xapi;

/**
 * The verbs that are used, of the vocabulary of Advanced Distributed Learning (xAPI 1.0.3, part 2, section 2.4.3, and its
 * vocabulary at http://adlnet.gov/expapi/verbs/).
 */
enum Verb {
    ANSWERED("answered", "respondió"),
    INTERACTED("interacted", "interactuó"),
    EXPERIENCED("experienced", "vio"),
    COMPLETED("completed", "completó"),
    PASSED("passed", "aprobó"),
    FAILED("failed", "no aprobó"),
    MASTERED("mastered", "dominó");

    private static final String HOME = "http://adlnet.gov/expapi/verbs/";

    private final String english;
    private final String spanish;

    Verb(String english, String spanish) {
        this.english = english;
        this.spanish = spanish;
    }

    String iri() {
        return HOME + english;
    }

    String english() {
        return english;
    }

    String spanish() {
        return spanish;
    }
}
