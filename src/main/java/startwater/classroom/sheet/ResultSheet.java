package startwater.classroom.sheet;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import startwater.classroom.Attempt;
import startwater.classroom.ClassWords;
import startwater.classroom.Step;
import startwater.page.Html;
import startwater.page.Paper;
import startwater.record.Entry;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What came of a class for each learner: a sheet of results, and a record of completion. */
public final class ResultSheet {
    private final Texts texts;
    private final ClassWords words;
    private final DrillWords drills;
    private final Paper paper;
    private final UnaryOperator<String> shown;
    private final DateTimeFormatter day;

    /**
     * A maker of sheets.
     *
     * @param texts of the class
     * @param shown gives the name to print for a pseudonym
     * @param zone in which the learners' days lie
     */
    public ResultSheet(Texts texts, Paper paper, UnaryOperator<String> shown, ZoneId zone) {
        this.texts = texts;
        this.words = new ClassWords(texts);
        this.drills = new DrillWords(texts);
        this.paper = paper;
        this.shown = shown;
        this.day = DateTimeFormatter.ISO_LOCAL_DATE.withZone(zone);
    }

    /** Results of all learners, a page each. */
    public String results(List<Attempt> attempts) {
        Html html = paper.untitled(texts.language().code(), texts.text("result.title"));
        byLearner(attempts).forEach((learner, own) -> {
            begin(html, "result.title");
            html.tag("h2", shown.apply(learner));
            own.forEach(a -> result(html, a));
            html.tag("p", "quiet", texts.text("caution")).raw("</section>");
        });
        return html.page();
    }

    /** A learner's own sheet, with the title on it: sheets are handed out one by one. */
    private void begin(Html html, String title) {
        html.raw("<section class=\"sheet\">").tag("h1", texts.text(title));
    }

    /** A word as the head of a column. */
    private String head(String key) {
        String word = texts.text(key);
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    private void result(Html html, Attempt a) {
        String title = a.scenario().words(texts.language().code()).title();
        html.tag("h3", title + ", " + day.format(a.begun()));
        html.tag("p", texts.text("result.mark", words.number(a.mark(), 0)));
        html.raw("<table>");
        html.row(
                "th",
                head("class.decision"),
                head("class.mark"),
                "",
                texts.text("result.done"),
                texts.text("result.best"));
        boolean fish = a.scenario().fish() != null;
        for (Step s : a.steps()) {
            Entry.Marks m = s.marks();
            html.row(
                    "td",
                    Integer.toString(s.number()),
                    m == null || !m.scored() ? "–" : words.number(m.decision(), 0),
                    m == null || !m.scored() ? texts.text("result.notCounted") : drills.word(m.word()),
                    drills.option(s.decision(), fish),
                    m == null ? "–" : drills.option(m.best(), fish));
        }
        html.raw("</table>");
    }

    /** Records of completion of all learners who finished something, a page each. */
    public String completions(List<Attempt> attempts) {
        Html html = paper.untitled(texts.language().code(), texts.text("done.title"));
        List<Attempt> whole = attempts.stream().filter(Attempt::whole).toList();
        byLearner(whole).forEach((learner, own) -> {
            begin(html, "done.title");
            html.raw("<p>" + Html.text(texts.text("done.name")) + " <span class=\"blank\">"
                    + Html.text(shown.apply(learner)) + "&#160;</span></p>");
            html.tag("p", texts.text("done.says")).raw("<table>");
            html.row(
                    "th",
                    texts.text("done.drill"),
                    texts.text("done.day"),
                    head("class.mark"),
                    texts.text("done.tank"));
            own.forEach(a -> html.row(
                    "td",
                    a.scenario().words(texts.language().code()).title(),
                    day.format(a.finished() == null ? a.begun() : a.finished()),
                    words.number(a.mark(), 0),
                    Long.toString(a.variant())));
            html.raw("</table>");
            Set<String> skills = new LinkedHashSet<>();
            own.forEach(a -> skills.addAll(a.scenario().skills()));
            html.tag(
                    "p",
                    texts.text(
                            "done.skills",
                            skills.stream().map(s -> texts.text("skill." + s)).collect(Collectors.joining(", "))));
            html.tag("p", texts.text("done.version", own.get(0).version()));
            html.tag("p", texts.text("done.words")).tag("p", "words", EightWords.of(proof(own)));
            html.raw("<p><b>" + Html.text(texts.text("done.noLicence")) + "</b></p>");
            html.tag("p", "quiet", texts.text("privacy.body")).raw("</section>");
        });
        return html.page();
    }

    /** What the eight words stand for: every decision with its mark. The same attempts give the same words. */
    private static String proof(List<Attempt> own) {
        StringBuilder out = new StringBuilder();
        for (Attempt a : own) {
            out.append(a.id())
                    .append(' ')
                    .append(a.scenario().id())
                    .append(' ')
                    .append(a.variant())
                    .append('\n');
            a.steps().forEach(s -> out.append(s.decision())
                    .append(' ')
                    .append(s.marks())
                    .append('\n'));
        }
        return out.toString();
    }

    private static Map<String, List<Attempt>> byLearner(List<Attempt> attempts) {
        Map<String, List<Attempt>> all = new TreeMap<>();
        attempts.forEach(
                a -> all.computeIfAbsent(a.learner(), l -> new ArrayList<>()).add(a));
        return new LinkedHashMap<>(all);
    }
}
