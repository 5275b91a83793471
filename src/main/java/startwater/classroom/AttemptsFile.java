package startwater.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.record.Entry;
import startwater.record.EntryText;

/**
 * What a learner hands in: the lines of the learner file that belong to a hand-out, and the line that says whose they are.
 * A file from somebody else is read as text, up to a size, and nothing in it is run, followed or written anywhere.
 */
public final class AttemptsFile {
    public static final String ENDING = ".startwater-attempts.jsonl";

    /** Largest file that is read, bytes: an attempt of eight decisions takes about 12 kB. */
    public static final int MOST_BYTES = 1_000_000;

    private static final int LONGEST_LINE = 16_384;
    private static final int MOST_ATTEMPTS = 100;

    private AttemptsFile() {}

    /**
     * A file as it was read.
     *
     * @param name of the file
     * @param learner the last line that says whose it is, or null
     * @param attempts lines of each attempt, in the order of the file
     * @param findings what is wrong with it
     */
    public record Read(
            String name,
            Entry.@Nullable Learner learner,
            Map<String, List<Entry.OfAttempt>> attempts,
            List<Finding> findings) {
        static Read failed(String name, Finding.Kind why) {
            return new Read(name, null, Map.of(), List.of(Finding.of(why)));
        }
    }

    /**
     * The lines to hand in, as they stand in the learner file.
     *
     * @param learnerFile text of a learner file
     * @param handout id of the hand-out
     */
    public static String text(String learnerFile, String handout) {
        Set<String> attempts = new LinkedHashSet<>();
        List<String> kept = new ArrayList<>();
        String whose = "";
        for (String line : lines(learnerFile)) {
            Entry entry = EntryText.read(line).entry();
            if (entry instanceof Entry.Learner) {
                whose = line;
            } else if (entry instanceof Entry.Begun begun && handout.equals(begun.handout())) {
                attempts.add(begun.attempt());
                kept.add(line);
            } else if (entry instanceof Entry.OfAttempt of && attempts.contains(of.attempt())) {
                kept.add(line);
            }
        }
        kept.add(0, whose);
        return String.join("\n", kept) + "\n";
    }

    /** Reads a file that somebody handed in; never throws for what it is or holds. */
    public static Read read(Path file) {
        String name = PlainName.of(String.valueOf(file.getFileName()));
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Read.failed(name, Finding.Kind.NOT_A_FILE);
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES
                    ? Read.failed(name, Finding.Kind.TOO_BIG)
                    : read(name, new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Read.failed(name, Finding.Kind.NO_ACCESS);
        }
    }

    static Read read(String name, String text) {
        Entry.@Nullable Learner learner = null;
        Map<String, List<Entry.OfAttempt>> attempts = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        int damaged = 0;
        boolean newer = false;
        for (String line : lines(text)) {
            EntryText.Line read = line.length() > LONGEST_LINE ? null : EntryText.read(line);
            if (read == null || read.sort() == EntryText.Sort.DAMAGED) {
                damaged++;
            } else if (read.entry() instanceof Entry.Learner l) {
                learner = l;
                newer |= l.format() > EntryText.FORMAT;
            } else if (read.entry() instanceof Entry.OfAttempt of
                    && (attempts.size() < MOST_ATTEMPTS || attempts.containsKey(of.attempt()))) {
                attempts.computeIfAbsent(of.attempt(), id -> new ArrayList<>()).add(of);
            }
        }
        if (newer) {
            findings.add(Finding.of(Finding.Kind.NEWER));
        }
        if (damaged > 0) {
            findings.add(new Finding(Finding.Kind.DAMAGED_LINES, Integer.toString(damaged)));
        }
        if (learner == null || attempts.isEmpty()) {
            findings.add(Finding.of(Finding.Kind.NOTHING_IN_IT));
        }
        return new Read(name, learner, attempts, findings);
    }

    private static List<String> lines(String text) {
        return text.lines().filter(line -> !line.isBlank()).toList();
    }
}
