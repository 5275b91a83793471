package startwater.classroom;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import startwater.record.Difference.What;
import startwater.text.Language;
import startwater.text.Texts;

/** The words of a class, for terminal, window and paper. */
public final class ClassWords {
    /** The language file of this room. */
    public static final String FILE = "/startwater/classroom/class";

    private static final Map<What, String> GROUPS = new EnumMap<>(What.class);

    static {
        for (What what : What.values()) {
            GROUPS.put(
                    what,
                    switch (what) {
                        case LINES, VISIT -> "line";
                        case STRIP, READING -> "reading";
                        case TEMPERATURE, OXYGEN, PH, ALIVE, FOUND, DAY -> "seen";
                        case LOG -> "log";
                        case TANK -> "tank";
                        case END_ALIVE, FILTER_DAY, LUCK -> "end";
                        default -> "mark";
                    });
        }
    }

    private final Texts texts;

    /** @param texts with {@link #FILE} among its files */
    public ClassWords(Texts texts) {
        this.texts = texts;
    }

    /** Why a file could not be opened as a hand-out. @param read what came of reading it: trouble */
    public String refused(Object file, HandoutFile.Read read) {
        String trouble = Objects.requireNonNull(read.trouble()).name().toLowerCase(Locale.ROOT);
        return texts.text("class.badHandout." + trouble, file, read.detail());
    }

    /** The words of a class with those of drills and lessons. */
    public static Texts texts(Language language) {
        return Texts.of(language, Texts.DRILL, Texts.LESSON, FILE);
    }

    public Texts texts() {
        return texts;
    }

    /** A finding as a sentence. */
    String finding(Finding f) {
        String key = "finding." + f.kind().name().toLowerCase(Locale.ROOT);
        return switch (f.kind()) {
            case LOG_CHANGED, MARK_CHANGED -> texts.text(key, texts.text("differs." + group(f.detail())));
            default -> texts.text(key, f.detail());
        };
    }

    /**
     * All that was found about one thing, each sentence once.
     *
     * @param shown gives the name to show for a pseudonym
     */
    public String findings(List<Finding> found, UnaryOperator<String> shown) {
        return found.stream()
                .map(f -> f.kind().status() == Finding.Status.DUPLICATE
                        ? new Finding(f.kind(), shown.apply(f.detail()))
                        : f)
                .map(this::finding)
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private static String group(String what) {
        return GROUPS.getOrDefault(What.valueOf(what), "line");
    }

    public String status(Finding.Status status) {
        return texts.text("status." + status.name().toLowerCase(Locale.ROOT));
    }

    public String reason(DecisionItem.Reason reason) {
        return texts.text("reason." + reason.name().toLowerCase(Locale.ROOT));
    }

    /** An interval, or a dash where nothing can be said. @param decimals of its ends */
    public String interval(startwater.classroom.stats.Interval i, int decimals) {
        return i.known()
                ? texts.text("class.interval", texts.decimals(i.low(), decimals), texts.decimals(i.high(), decimals))
                : "–";
    }

    /** A number, or a dash where there is none. */
    public String number(double value, int decimals) {
        return Double.isNaN(value) ? "–" : texts.decimals(value, decimals);
    }
}
