package startwater.app.view;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.HPos;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.classroom.Attempt;
import startwater.classroom.ClassTable;
import startwater.classroom.ClassWords;
import startwater.classroom.DecisionItem;
import startwater.classroom.DrillStatistics;
import startwater.classroom.Roster;
import startwater.classroom.stats.ItemAnalysis;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The tables of the teacher's desk. */
final class ClassTables {
    private static final int MOST_LINES = 4;
    private static final int PERCENT = 100;
    private static final int DECIMALS = 2;

    private ClassTables() {}

    /** Learners by skills: per cents, with the observations behind each. */
    static VBox learners(List<Attempt> attempts, Roster roster, ClassWords said, ZoneId zone) {
        Texts texts = said.texts();
        ClassTable table = ClassTable.of(attempts, zone);
        GridPane grid = grid();
        head(grid, 0, texts.text("class.learner"));
        head(grid, 1, texts.text("class.finished"));
        head(grid, 2, texts.text("class.mark"));
        for (int s = 0; s < table.skills().size(); s++) {
            head(grid, 3 + s, texts.text("skill." + table.skills().get(s).id()));
        }
        int row = 1;
        for (ClassTable.Row learner : table.rows()) {
            grid.add(new Label(roster.shown(learner.learner())), 0, row);
            cell(grid, 1, row, learner.finished() + "/" + learner.attempts());
            cell(grid, 2, row, said.number(learner.mark(), 0));
            for (int s = 0; s < learner.cells().size(); s++) {
                ClassTable.Cell c = learner.cells().get(s);
                cell(grid, 3 + s, row, said.number(PERCENT * c.known(), 0));
            }
            row++;
        }
        return new VBox(
                12,
                Ui.text(texts.text(table.rows().isEmpty() ? "desk.empty" : "class.known"), "sw-quiet"),
                wide(grid, texts.text("class.known")));
    }

    /** Each drill's decisions, and what is worth talking about. */
    static VBox decisions(List<Attempt> attempts, DrillWords words, ClassWords said, ClassView.Desk desk) {
        Texts texts = said.texts();
        VBox page = new VBox(12);
        List<DrillStatistics> all = DrillStatistics.all(attempts);
        if (all.isEmpty()) {
            page.getChildren().add(Ui.text(texts.text("desk.empty"), "sw-quiet"));
        }
        for (DrillStatistics drill : all) {
            String title = words.scenario(drill.scenario()).title();
            page.getChildren()
                    .addAll(
                            Ui.text(
                                    texts.text(
                                            "class.drill",
                                            title,
                                            drill.attempts().size()),
                                    "sw-strong"),
                            wide(items(drill, said, desk), title),
                            Ui.text(
                                    texts.text(
                                            "class.reliability",
                                            said.number(drill.analysis().reliability(), DECIMALS),
                                            said.interval(drill.analysis().reliabilityWithin(), DECIMALS),
                                            drill.analysis().complete()),
                                    "sw-label"));
            if (drill.attempts().size() < ItemAnalysis.ENOUGH) {
                page.getChildren().add(Ui.text(texts.text("class.few", ItemAnalysis.ENOUGH), "sw-label", "sw-quiet"));
            }
            page.getChildren().add(wrong(drill, words, texts));
        }
        return page;
    }

    private static GridPane items(DrillStatistics drill, ClassWords said, ClassView.Desk desk) {
        Texts texts = said.texts();
        GridPane grid = grid();
        List<String> heads = List.of(
                "class.decision",
                "class.learners",
                "class.mark",
                "class.facility",
                "class.within",
                "class.tells",
                "class.within",
                "class.discuss");
        for (int i = 0; i < heads.size(); i++) {
            head(grid, i, texts.text(heads.get(i)));
        }
        int row = 1;
        for (DecisionItem item : drill.items()) {
            long variant = drill.attempts().get(0).variant();
            String name = texts.text("desk.open", item.number());
            Hyperlink open = Ui.link(name, () -> desk.debrief(drill.scenario(), variant, item.number()));
            open.setMinWidth(Region.USE_PREF_SIZE);
            grid.add(open, 0, row);
            cell(grid, 1, row, Integer.toString(item.marks().n()));
            cell(grid, 2, row, said.number(item.marks().mean(), 0));
            cell(grid, 3, row, said.number(item.item().facility(), DECIMALS));
            cell(grid, 4, row, said.interval(item.item().facilityWithin(), DECIMALS));
            cell(grid, 5, row, said.number(item.item().discrimination(), DECIMALS));
            cell(grid, 6, row, said.interval(item.item().discriminationWithin(), DECIMALS));
            grid.add(Ui.text(item.reasons().stream().map(said::reason).collect(Collectors.joining("; "))), 7, row);
            row++;
        }
        return grid;
    }

    private static VBox wrong(DrillStatistics drill, DrillWords words, Texts texts) {
        boolean fish = drill.scenario().fish() != null;
        VBox box = new VBox(4, Ui.text(texts.text("class.firstWrong"), "sw-strong"));
        drill.firstWrong().stream().limit(MOST_LINES).forEach(f -> box.getChildren()
                .add(Ui.text(texts.text(
                        "class.firstWrongLine",
                        f.count(),
                        words.option(f.own(), fish),
                        words.option(f.best(), fish)))));
        box.getChildren().add(Ui.text(texts.text("class.readings"), "sw-strong"));
        drill.readings().stream().filter(r -> r.wrong() > 0).limit(MOST_LINES).forEach(r -> box.getChildren()
                .add(Ui.text(texts.text(
                        "class.readingLine", words.pad(r.pad()), r.wrong(), r.written(), r.tooLow(), r.tooHigh()))));
        if (drill.readings().stream().noneMatch(r -> r.wrong() > 0)) {
            box.getChildren().add(Ui.text(texts.text("class.none"), "sw-quiet"));
        }
        return box;
    }

    /** A table that may be wider than the page. @param name for screen readers */
    private static ScrollPane wide(GridPane grid, String name) {
        ScrollPane wide = new ScrollPane(grid);
        wide.setFitToHeight(true);
        wide.setStyle("-fx-background-color: transparent; -fx-background: transparent;");
        wide.setAccessibleText(name);
        return wide;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(6);
        return grid;
    }

    private static void head(GridPane grid, int column, String words) {
        Label label = Ui.text(words, "sw-label", "sw-quiet");
        label.setStyle("-fx-max-width: 7.5em;");
        grid.add(label, column, 0);
    }

    private static void cell(GridPane grid, int column, int row, String words) {
        Label label = new Label(words);
        label.setMinWidth(Region.USE_PREF_SIZE);
        GridPane.setHalignment(label, HPos.RIGHT);
        grid.add(label, column, row);
    }
}
