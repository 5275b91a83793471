package startwater.app.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import startwater.classroom.Handout;
import startwater.content.LessonCard;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What to hand out: drills, one tank or one each, practice or exam, a title and a deadline in words. */
final class HandOutPane extends VBox {
    private static final double CARD = 280;

    private final Texts texts;
    private final Map<Scenario, CheckBox> boxes = new LinkedHashMap<>();
    private final Map<String, CheckBox> lessons = new LinkedHashMap<>();
    private final TextField title = new TextField();
    private final TextField deadline = new TextField();
    private final TextField seed = new TextField("1");
    private boolean same = true;
    private Entry.Mode mode = Entry.Mode.PRACTICE;

    HandOutPane(List<Scenario> drills, DrillWords words, ClassView.Desk desk) {
        super(14);
        this.texts = words.texts();
        FlowPane shelf = new FlowPane(16, 8);
        for (Scenario drill : drills) {
            CheckBox box = box(words.scenario(drill).title());
            boxes.put(drill, box);
            shelf.getChildren().add(box);
        }
        FlowPane reading = new FlowPane(16, 8);
        // Cards, not whole lessons: to read those takes most of a second, and nobody reads them here.
        for (LessonCard lesson : Library.shipped().lessonCards(texts.language().code())) {
            CheckBox box = box(lesson.number() + "  " + lesson.title());
            lessons.put(lesson.id(), box);
            reading.getChildren().add(box);
        }
        Button keep = Ui.button(texts.text("desk.keep"), "sw-primary", () -> desk.keep(handout()));
        keep.setId("keep");
        keep.setDisable(true);
        Label why = Ui.text(texts.text("class.nothingHanded"), "sw-label", "sw-quiet");
        Label wrong = Ui.text(texts.text("desk.badSeed"), "sw-label", "sw-danger");
        Runnable check = () -> {
            boolean none = Stream.concat(boxes.values().stream(), lessons.values().stream())
                    .noneMatch(CheckBox::isSelected);
            boolean bad = !seed.getText().strip().matches("\\d{1,9}");
            why.setVisible(none);
            wrong.setVisible(bad);
            wrong.setManaged(bad);
            keep.setDisable(none || bad);
        };
        boxes.values().forEach(b -> b.selectedProperty().addListener((p, was, is) -> check.run()));
        lessons.values().forEach(b -> b.selectedProperty().addListener((p, was, is) -> check.run()));
        seed.textProperty().addListener((p, was, is) -> check.run());
        Ui.Choice<Boolean> tanks = new Ui.Choice<>(
                texts.text("desk.tanks"),
                List.of(true, false),
                one -> texts.text(one ? "desk.same" : "desk.each"),
                one -> same = one);
        tanks.select(same);
        Ui.Choice<Entry.Mode> modes = new Ui.Choice<>(
                texts.text("desk.mode"),
                List.of(Entry.Mode.values()),
                m -> texts.text(m == Entry.Mode.EXAM ? "desk.exam" : "desk.practice"),
                m -> mode = m);
        modes.select(mode);
        seed.setPrefColumnCount(6);
        getChildren()
                .addAll(
                        Ui.text(texts.text("desk.which"), "sw-strong"),
                        shelf,
                        Ui.text(texts.text("desk.whichLessons"), "sw-strong"),
                        reading,
                        new FlowPane(16, 8, tanks, modes),
                        field("desk.name", title, 30),
                        field("desk.until", deadline, 30),
                        field("desk.seed", seed, 6),
                        wrong,
                        new FlowPane(16, 8, keep, why));
        check.run();
    }

    private static CheckBox box(String words) {
        CheckBox box = new CheckBox(words);
        box.setPrefWidth(CARD);
        box.setWrapText(true);
        return box;
    }

    private VBox field(String key, TextField field, int columns) {
        Label label = Ui.text(texts.text(key), "sw-label");
        label.setLabelFor(field);
        field.setAccessibleText(texts.text(key));
        field.setPrefColumnCount(columns);
        field.setMaxWidth(USE_PREF_SIZE);
        return new VBox(2, label, field);
    }

    private Handout handout() {
        List<Handout.Drill> chosen = boxes.entrySet().stream()
                .filter(e -> e.getValue().isSelected())
                .map(e -> new Handout.Drill(e.getKey(), null))
                .toList();
        return new Handout(
                UUID.randomUUID().toString(),
                title.getText().strip(),
                mode,
                deadline.getText().strip(),
                same,
                Long.parseLong(seed.getText().strip()),
                chosen,
                lessons.entrySet().stream()
                        .filter(e -> e.getValue().isSelected())
                        .map(Map.Entry::getKey)
                        .toList());
    }
}
