package startwater.cli;

import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import startwater.classroom.Attempt;
import startwater.classroom.ClassTable;
import startwater.classroom.ClassWords;
import startwater.classroom.Collector;
import startwater.classroom.DecisionItem;
import startwater.classroom.DrillStatistics;
import startwater.classroom.Finding;
import startwater.classroom.HandedIn;
import startwater.classroom.Roster;
import startwater.classroom.stats.ItemAnalysis;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** A class in a terminal: what came back, who can do what, what each drill shows. */
final class ClassPage {
    private static final int DECIMALS = 2;
    private static final int MOST_LINES = 5;
    private static final int PERCENT = 100;

    private final Texts texts;
    private final ClassWords words;
    private final DrillWords drills;
    private final Roster roster;

    ClassPage(Texts texts, Roster roster) {
        this.texts = texts;
        this.words = new ClassWords(texts);
        this.drills = new DrillWords(texts);
        this.roster = roster;
    }

    void print(List<HandedIn> all, ZoneId zone, PrintWriter out) {
        out.println(texts.text("class.files", all.size()));
        Map<Finding.Status, Long> counts =
                all.stream().collect(Collectors.groupingBy(HandedIn::status, TreeMap::new, Collectors.counting()));
        counts.forEach((status, n) -> out.println("  " + texts.text("class.counts", words.status(status), n)));
        out.println(texts.text(
                "class.second", all.stream().filter(HandedIn::checked).count()));
        flagged(all, out);
        List<Attempt> counting = Collector.counting(all);
        table(ClassTable.of(counting, zone), out);
        DrillStatistics.all(counting).forEach(drill -> drill(drill, out));
    }

    private void flagged(List<HandedIn> all, PrintWriter out) {
        List<HandedIn> odd = all.stream().filter(h -> !h.findings().isEmpty()).toList();
        if (!odd.isEmpty()) {
            heading(texts.text("class.flagged"), out);
        }
        for (HandedIn h : odd) {
            String said = words.findings(h.findings(), roster::shown);
            out.println(roster.shown(h.learner()) + "  " + h.file() + "  " + said);
        }
    }

    private void table(ClassTable table, PrintWriter out) {
        if (table.rows().isEmpty()) {
            return;
        }
        heading(texts.text("class.known"), out);
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(
                List.of(texts.text("class.learner"), texts.text("class.finished"), texts.text("class.mark")));
        table.skills().forEach(skill -> head.add(skill.id()));
        rows.add(head);
        for (ClassTable.Row row : table.rows()) {
            List<String> cells = new ArrayList<>();
            cells.add(roster.shown(row.learner()));
            cells.add(row.finished() + "/" + row.attempts());
            cells.add(words.number(row.mark(), 0));
            row.cells().forEach(c -> cells.add(words.number(PERCENT * c.known(), 0)));
            rows.add(cells);
        }
        columns(rows, out);
    }

    private void drill(DrillStatistics drill, PrintWriter out) {
        String title = drill.scenario().words(texts.language().code()).title();
        heading(texts.text("class.drill", title, drill.attempts().size()), out);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                texts.text("class.decision"),
                texts.text("class.learners"),
                texts.text("class.mark"),
                texts.text("class.facility"),
                texts.text("class.within"),
                texts.text("class.tells"),
                texts.text("class.within")));
        for (DecisionItem item : drill.items()) {
            ItemAnalysis.Item i = item.item();
            rows.add(List.of(
                    Integer.toString(item.number()),
                    Integer.toString(item.marks().n()),
                    words.number(item.marks().mean(), 0),
                    words.number(i.facility(), DECIMALS),
                    words.interval(i.facilityWithin(), DECIMALS),
                    words.number(i.discrimination(), DECIMALS),
                    words.interval(i.discriminationWithin(), DECIMALS)));
        }
        columns(rows, out);
        ItemAnalysis a = drill.analysis();
        out.println(texts.text(
                "class.reliability",
                words.number(a.reliability(), DECIMALS),
                words.interval(a.reliabilityWithin(), DECIMALS),
                a.complete()));
        if (drill.attempts().size() < ItemAnalysis.ENOUGH) {
            out.println(texts.text("class.few", ItemAnalysis.ENOUGH));
        }
        wrong(drill, out);
    }

    private void wrong(DrillStatistics drill, PrintWriter out) {
        boolean fish = drill.scenario().fish() != null;
        list(
                "class.firstWrong",
                drill.firstWrong().stream()
                        .map(f -> texts.text(
                                "class.firstWrongLine",
                                f.count(),
                                drills.option(f.own(), fish),
                                drills.option(f.best(), fish)))
                        .toList(),
                out);
        list(
                "class.readings",
                drill.readings().stream()
                        .filter(r -> r.wrong() > 0)
                        .map(r -> texts.text(
                                "class.readingLine",
                                drills.pad(r.pad()),
                                r.wrong(),
                                r.written(),
                                r.tooLow(),
                                r.tooHigh()))
                        .toList(),
                out);
        list(
                "class.discuss",
                drill.toDiscuss().stream()
                        .map(i -> texts.text(
                                "class.discussLine",
                                i.number(),
                                i.reasons().stream().map(words::reason).collect(Collectors.joining("; "))))
                        .toList(),
                out);
    }

    private void list(String key, List<String> lines, PrintWriter out) {
        out.println(texts.text(key) + ":");
        if (lines.isEmpty()) {
            out.println("  " + texts.text("class.none"));
        }
        lines.stream().limit(MOST_LINES).forEach(line -> out.println("  " + line));
    }

    private static void heading(String words, PrintWriter out) {
        out.println();
        out.println("== " + words + " ==");
    }

    private static void columns(List<List<String>> rows, PrintWriter out) {
        int[] widths = new int[rows.get(0).size()];
        rows.forEach(row -> {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        });
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
