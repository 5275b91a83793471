package startwater.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import startwater.record.Notice;
import startwater.text.Texts;

/** What is to be told about a learner file, in words. */
public final class Notices {
    private Notices() {}

    /** The sentence of a notice. */
    public static String say(Notice notice, Texts texts) {
        Object[] parameters = notice.parameters().toArray();
        return texts.text(notice.key(), parameters);
    }

    /** How a learner is called who may have no name. */
    public static String name(String name, Texts texts) {
        return name.isEmpty() ? texts.text("learner.nameless") : name;
    }

    /** Files by name, in one line. */
    public static String files(List<Path> files) {
        return files.stream().map(f -> String.valueOf(f.getFileName())).collect(Collectors.joining(", "));
    }
}
