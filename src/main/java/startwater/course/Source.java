package startwater.course;

/** Where an observation comes from. @param kind drill or lesson @param id id of the drill or lesson */
public record Source(Kind kind, String id) {
    /** The two kinds of things to do. */
    public enum Kind {
        DRILL,
        LESSON
    }

    public static Source drill(String id) {
        return new Source(Kind.DRILL, id);
    }

    public static Source lesson(String id) {
        return new Source(Kind.LESSON, id);
    }
}
