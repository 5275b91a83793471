package startwater.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Something to be told about a learner file, in words that lie elsewhere under {@link #key()}. */
public record Notice(Kind kind, List<Object> parameters) {
    /** What happened. */
    public enum Kind {
        /** Nothing can be written. Parameters: the file, what the system said. */
        NOT_KEPT,
        /** The file is not there any more while it is written: a stick was taken out. What waits is written once it is back. Parameters: the file. */
        GONE,
        /** The clock of the computer lies behind the times in the file. Parameters: the day by the clock, the day of the latest line. */
        CLOCK_BACK,
        /** Another program writes to the file. Parameters: name of the learner. */
        ELSEWHERE,
        /** The file comes from a newer program. Parameters: the file, its format, the newest known format. */
        NEWER,
        /** An unreadable end was set aside. Parameters: the file, where to, how many bytes. */
        SET_ASIDE,
        /** An unreadable end is passed over, since the file is only looked at. Parameters: the file. */
        UNREADABLE_END,
        /** A line cannot be read and is left out. Parameters: the file, number of the line, from 1. */
        DAMAGED_LINE,
        /** The drill has changed since an attempt was left. Parameters: none. */
        DRILL_CHANGED,
        /** The program has changed since an attempt was left. Parameters: none. */
        ENGINE_CHANGED,
        /** An attempt cannot be played again from the file. Parameters: none. */
        ATTEMPT_BROKEN
    }

    public Notice {
        parameters = List.copyOf(parameters);
    }

    static Notice of(Kind kind, Object... parameters) {
        return new Notice(kind, List.of(parameters));
    }

    /** That nothing can be written to a file. */
    static Notice notKept(Path file, IOException e) {
        return of(
                Kind.NOT_KEPT,
                file.toString(),
                e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage());
    }

    /** Key of its sentence in the language files. */
    public String key() {
        return "record." + ActText.name(kind);
    }
}
