package startwater.app.view;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import startwater.app.model.RehearsalModel;
import startwater.bench.UnitSystem;
import startwater.rehearse.Entry;
import startwater.rehearse.Examples;
import startwater.text.Refusal;
import startwater.text.Texts;

/** The form in sections. What cannot be read stays in its field with the reason below it. */
final class RehearsalForm extends VBox {
    private static final double LABEL_EM = 11;
    private static final double SIDE_BY_SIDE_EM = 24;
    private static final double GAP = 6;

    private final RehearsalModel model;
    private final Texts texts;
    private final Consumer<Entry> focused;
    private final Map<Entry, Label> reasons = new EnumMap<>(Entry.class);
    private final Map<Entry.Section, Fold> folds = new EnumMap<>(Entry.Section.class);

    /** @param focused told whose field has the focus, @param anew called when the whole form has changed */
    RehearsalForm(RehearsalModel model, Texts texts, Consumer<Entry> focused, Runnable anew) {
        super(GAP);
        Button example = Ui.button(texts.text("rehwin.example"), "", () -> {
            model.take(Examples.barrel());
            anew.run();
        });
        example.setId("example");
        VBox intro = new VBox(8, Ui.text(texts.text("rehwin.intro"), "sw-quiet"), example);
        intro.setPadding(new Insets(4, 4, 8, 4));
        getChildren().add(intro);
        this.model = model;
        this.texts = texts;
        this.focused = focused;
        for (Entry.Section section : Entry.Section.values()) {
            Fold fold = new Fold(
                    texts,
                    "section-" + section,
                    texts.text("reh.section." + section),
                    filled(section),
                    () -> section(section));
            folds.put(section, fold);
            getChildren().add(fold);
        }
        Objects.requireNonNull(folds.get(Entry.Section.SYSTEM)).openProperty().set(true);
    }

    /** Opens the section of an entry and gives its field the focus. */
    void show(Entry entry) {
        Objects.requireNonNull(folds.get(entry.section())).openProperty().set(true);
        Node field = lookup("#field-" + entry.key());
        if (field != null) {
            field.requestFocus();
        }
    }

    /** Scrolls to the field of an entry. @param place what scrolls this form */
    void reach(Entry entry, ScrollPane place) {
        Node field = lookup("#field-" + entry.key());
        if (field == null) {
            return;
        }
        double at = sceneToLocal(field.localToScene(field.getBoundsInLocal())).getMinY();
        double room = getHeight() - place.getViewportBounds().getHeight();
        place.setVvalue(
                room <= 0
                        ? 0
                        : Math.max(
                                0, Math.min(1, (at - place.getViewportBounds().getHeight() / 3) / room)));
    }

    private VBox section(Entry.Section section) {
        VBox lines = new VBox(GAP);
        lines.setPadding(new Insets(2, 4, 0, 4));
        Entry.in(section).forEach(entry -> lines.getChildren().add(line(entry)));
        return lines;
    }

    private VBox line(Entry entry) {
        String name = texts.text("reh.label." + entry.key());
        String unit = entry.measure().unit(model.form().units());
        Label label = Ui.text(name);
        Node field = entry.options().isEmpty() ? typed(entry) : chosen(entry);
        field.setId("field-" + entry.key());
        field.setAccessibleText(
                unit.isEmpty() ? texts.text("rehwin.fieldNoUnit", name) : texts.text("rehwin.field", name, unit));
        field.setAccessibleHelp(texts.text("reh.help." + entry.key()));
        label.setLabelFor(field);
        field.focusedProperty().addListener((p, was, is) -> {
            if (is) {
                focused.accept(entry);
            }
        });
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox answer = Ui.row(8, field);
        HBox.setHgrow(answer, Priority.ALWAYS);
        if (!unit.isEmpty()) {
            Label shown = Ui.text(unit, "sw-label", "sw-quiet");
            shown.setStyle("-fx-min-width: 3em;");
            answer.getChildren().add(shown);
        }
        Label reason = Ui.text("", "sw-label", "sw-danger");
        reason.managedProperty().bind(reason.textProperty().isNotEmpty());
        reasons.put(entry, reason);
        say(entry);
        return new Line(label, answer, reason);
    }

    /** Name and field side by side; one above the other where large text leaves no room. */
    private static final class Line extends VBox {
        private final HBox row = Ui.row(8);
        private final Label label;
        private final HBox answer;
        private final Label reason;

        Line(Label label, HBox answer, Label reason) {
            super(2);
            this.label = label;
            this.answer = answer;
            this.reason = reason;
            arrange();
            widthProperty().addListener((p, was, is) -> arrange());
        }

        private void arrange() {
            boolean narrow = getWidth() > 0
                    && getWidth() < SIDE_BY_SIDE_EM * label.getFont().getSize();
            boolean stands = !getChildren().isEmpty() && getChildren().contains(answer) == narrow;
            if (stands) {
                return;
            }
            row.getChildren().clear();
            getChildren().clear();
            label.setStyle(narrow ? "" : "-fx-pref-width: " + LABEL_EM + "em; -fx-min-width: " + LABEL_EM + "em;");
            if (narrow) {
                getChildren().addAll(label, answer, reason);
            } else {
                row.getChildren().addAll(label, answer);
                getChildren().addAll(row, reason);
            }
        }
    }

    private TextField typed(Entry entry) {
        TextField field = new TextField(model.form().answer(entry));
        field.setPrefColumnCount(8);
        Runnable take = () -> {
            model.answer(entry, field.getText());
            say(entry);
        };
        field.setOnAction(e -> take.run());
        field.focusedProperty().addListener((p, was, is) -> {
            if (!is) {
                take.run();
            }
        });
        // Whoever presses a button by its key has not left the field: an answer that can be read counts at once.
        field.textProperty().addListener((p, was, is) -> model.answer(entry, is));
        return field;
    }

    private ComboBox<String> chosen(Entry entry) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().add("");
        box.getItems().addAll(entry.options());
        box.setMaxWidth(Double.MAX_VALUE);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(String option) {
                return texts.text("reh.choice." + (option == null || option.isEmpty() ? "unknown" : option));
            }

            @Override
            public String fromString(String words) {
                return words;
            }
        });
        String now = model.form().answer(entry);
        box.setValue(entry.options().contains(now) ? now : "");
        box.valueProperty().addListener((p, was, is) -> {
            model.answer(entry, is == null ? "" : is);
            say(entry);
        });
        return box;
    }

    private String filled(Entry.Section section) {
        List<Entry> all = Entry.in(section);
        long known = all.stream()
                .filter(entry -> !model.form().answer(entry).isEmpty())
                .count();
        return texts.text("rehwin.filled", known, all.size());
    }

    private void say(Entry entry) {
        // While a section is being made its fold is not there yet, and says what is filled by itself.
        Fold fold = folds.get(entry.section());
        if (fold != null) {
            fold.say(filled(entry.section()));
        }
        Refusal refusal = model.refusal(entry);
        Objects.requireNonNull(reasons.get(entry)).setText(refusal == null ? "" : refusal.say(texts));
    }

    /** The choice of units. @param changed told when other units are chosen */
    static Ui.Choice<UnitSystem> units(RehearsalModel model, Texts texts, Runnable changed) {
        Ui.Choice<UnitSystem> choice = new Ui.Choice<>(
                texts.text("rehwin.units"),
                List.of(UnitSystem.values()),
                system -> texts.text("rehwin.units." + system),
                system -> {
                    model.units(system);
                    changed.run();
                });
        choice.select(model.form().units());
        return choice;
    }
}
