package startwater.content;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.jspecify.annotations.Nullable;

/** Reads one lesson file. Every fault it finds carries the line on which it stands. */
public final class LessonReader {
    public static final String ENDING = ".md";

    private static final Pattern NAME = Pattern.compile("((\\d\\d)-[a-z0-9]+(-[a-z0-9]+)*)(\\.es)?\\.md");
    private static final int DEEPEST = 20;
    /** A lesson of ten minutes has a twentieth of this; Markdown made to be slow is slow beyond it. */
    private static final int MOST_CHARACTERS = 200_000;

    private LessonReader() {}

    /** A lesson with the line of each of its blocks and its front block, for the rules that need two lessons. */
    record Placed(Lesson lesson, List<Integer> lines, Fields front) {}

    /**
     * Reads a file; never throws for what stands in it.
     *
     * @param drills ids of the drills that links may lead to; null to leave links unchecked
     */
    public static Parsed<Lesson> read(Path path, @Nullable Set<String> drills) {
        return bare(parse(Loaded.of(path), drills));
    }

    /** Reads the bytes of a file. @param file the path to name in faults; its last part gives id and language */
    public static Parsed<Lesson> read(String file, byte[] bytes, @Nullable Set<String> drills) {
        return bare(parse(Loaded.of(file, bytes), drills));
    }

    private static Parsed<Lesson> bare(Parsed<Placed> placed) {
        Placed value = placed.value();
        return value != null ? Parsed.of(value.lesson()) : new Parsed<>(null, placed.faults());
    }

    /** Language that a file name tells. */
    static String language(String name) {
        return name.endsWith(".es.md") ? Languages.SPANISH : Languages.ENGLISH;
    }

    /** File name of the same lesson in the other language. */
    static String twin(String name) {
        return language(name).equals(Languages.SPANISH)
                ? name.substring(0, name.length() - ".es.md".length()) + ENDING
                : name.substring(0, name.length() - ENDING.length()) + ".es.md";
    }

    /** Id of the lesson in a file of this name: its name without endings. */
    static String id(String name) {
        Matcher named = NAME.matcher(FileNames.base(name, ""));
        return named.matches() ? named.group(1) : "";
    }

    /** What a list says of the lesson in a file; empty where its name or its front block is broken. */
    static Optional<LessonCard> card(Loaded file) {
        Loaded fresh = file.anew();
        String text = fresh.text();
        Matcher named = NAME.matcher(FileNames.base(file.file(), ""));
        LessonFront front =
                text == null || !named.matches() ? null : LessonFront.read(text, named.group(), fresh.faults());
        if (front == null || !fresh.faults().none()) {
            return Optional.empty();
        }
        Fields f = front.fields();
        return Optional.of(new LessonCard(
                named.group(1),
                language(named.group()),
                Integer.parseInt(named.group(2)),
                f.text("title"),
                f.whole("minutes"),
                f.texts("skills"),
                f.texts("after")));
    }

    static Parsed<Placed> parse(Loaded file, @Nullable Set<String> drills) {
        String text = file.text();
        Faults faults = file.faults();
        String name = FileNames.base(file.file(), "");
        Matcher named = NAME.matcher(name);
        if (!named.matches()) {
            faults.add(0, Complaint.LESSON_NAME, "name", name);
        }
        String language = language(name);
        LessonRules rules = new LessonRules(language, drills, faults);
        if (text != null && text.length() > MOST_CHARACTERS) {
            faults.add(0, Complaint.TOO_BIG, "limit", MOST_CHARACTERS / 1000);
            return Parsed.failed(faults);
        }
        LessonFront front = text == null ? null : LessonFront.of(text, name, faults);
        if (text == null || front == null) {
            return Parsed.failed(faults);
        }
        String body = text.lines().skip(front.lines()).collect(Collectors.joining("\n", "", "\n"));
        ProseReader prose = new ProseReader(front, rules, faults.below(front.lines()));
        Parser.builder()
                .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                .maxOpenBlockParsers(DEEPEST)
                .maxInlineNesting(DEEPEST)
                .build()
                .parse(body)
                .accept(prose);
        front.unused();
        if (!faults.none() || !named.matches()) {
            return Parsed.failed(faults);
        }
        Lesson lesson =
                lesson(named.group(1), Integer.parseInt(named.group(2)), language, front.fields(), prose.blocks());
        List<Integer> lines =
                prose.lines().stream().map(line -> line + front.lines()).toList();
        return Parsed.of(new Placed(lesson, lines, front.fields()));
    }

    private static Lesson lesson(String id, int number, String language, Fields f, List<Block> blocks) {
        return new Lesson(
                id,
                language,
                number,
                f.text("title"),
                f.whole("minutes"),
                f.texts("skills"),
                f.wholes("rules"),
                f.texts("after"),
                f.texts("competencies"),
                f.texts("sources"),
                blocks);
    }
}
