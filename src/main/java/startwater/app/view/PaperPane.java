package startwater.app.view;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import startwater.app.model.ClassExport;
import startwater.classroom.Attempt;
import startwater.classroom.Roster;
import startwater.drill.Scenario;
import startwater.page.Paper;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The part of the teacher's desk that makes files: sheets of a drill, results and records of the class, tables. */
final class PaperPane extends VBox {
    private final Texts texts;
    private final ComboBox<Scenario> drill = new ComboBox<>();
    private final CheckBox key;
    private Paper paper = Paper.A4;

    PaperPane(List<Scenario> drills, List<Attempt> attempts, Roster roster, DrillWords words, ClassView.Desk desk) {
        super(14);
        this.texts = words.texts();
        this.key = new CheckBox(texts.text("desk.withKey"));
        drill.getItems().setAll(drills);
        drill.setConverter(new StringConverter<>() {
            @Override
            public String toString(Scenario s) {
                return s == null ? "" : words.scenario(s).title();
            }

            @Override
            public Scenario fromString(String title) {
                throw new UnsupportedOperationException("The box takes no typing.");
            }
        });
        drill.getSelectionModel().select(0);
        drill.setAccessibleText(texts.text("desk.sheetOf"));
        drill.setId("sheet-of");
        Ui.Choice<Paper> papers = new Ui.Choice<>(
                texts.text("desk.paperSize"),
                List.of(Paper.values()),
                p -> texts.text("desk." + p.name().toLowerCase(Locale.ROOT)),
                p -> paper = p);
        papers.select(paper);
        getChildren()
                .addAll(
                        Ui.text(texts.text("desk.paperHow"), "sw-quiet"),
                        papers,
                        Ui.text(texts.text("desk.sheets"), "sw-strong"),
                        drill,
                        flow(
                                button("desk.worksheet", "worksheet", () -> desk.worksheet(drill.getValue(), paper)),
                                button(
                                        "desk.teacherSheet",
                                        "teacher-sheet",
                                        () -> desk.teacherSheet(drill.getValue(), key.isSelected(), paper)),
                                key),
                        Ui.text(texts.text("desk.ofClass"), "sw-strong"));
        if (attempts.isEmpty()) {
            getChildren().add(Ui.text(texts.text("desk.empty"), "sw-quiet"));
        }
        FlowPane pages = flow();
        FlowPane tables = flow();
        for (ClassExport export : ClassExport.values()) {
            Button button = button(
                    "desk.export." + export.key(), export.key(), () -> desk.export(export, attempts, roster, paper));
            button.setDisable(attempts.isEmpty());
            (export.page() ? pages : tables).getChildren().add(button);
        }
        getChildren().addAll(pages, tables, Ui.text(texts.text("desk.namesIn"), "sw-label", "sw-quiet"));
    }

    private Button button(String words, String id, Runnable act) {
        Button button = Ui.button(texts.text(words), "", act);
        button.setId(id);
        return button;
    }

    private static FlowPane flow(javafx.scene.Node... nodes) {
        FlowPane flow = new FlowPane(12, 8, nodes);
        flow.setRowValignment(javafx.geometry.VPos.CENTER);
        return flow;
    }
}
