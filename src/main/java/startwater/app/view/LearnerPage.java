package startwater.app.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.Desk;
import startwater.cli.Notices;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.RefusedException;
import startwater.text.Texts;

/** Who is learning: a name or a number, or none; and for the one who is here a copy of the work, another name, or an end. */
final class LearnerPage extends VBox {
    private static final double READING_WIDTH = 640;
    private static final int NAME_COLUMNS = 22;
    private static final String ENDING = ".jsonl";

    private final Desk desk;
    private final Texts texts;
    private final Picker picker;
    private final Runnable chosen;
    private final Runnable changed;
    private final Label said = Ui.text("", "sw-danger");
    private final VBox confirm = new VBox(8);

    /**
     * @param picker asks where a copy is to go
     * @param chosen goes on once a learner is chosen
     * @param changed makes the page anew after something has changed about the learner
     */
    LearnerPage(Desk desk, Texts texts, Picker picker, Runnable chosen, Runnable changed) {
        super(24);
        this.desk = desk;
        this.texts = texts;
        this.picker = picker;
        this.chosen = chosen;
        this.changed = changed;
        setPadding(new Insets(28, 24, 24, 32));
        said.setId("learner-said");
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        getChildren().addAll(Ui.text(texts.text("learner.who"), "sw-title"), first(), asking(), said);
        if (desk.chosen()) {
            getChildren().add(own());
        }
    }

    private Region first() {
        Label words = Ui.text(texts.text("learner.first"), "sw-sentence");
        words.setMaxWidth(READING_WIDTH);
        return words;
    }

    /** A name to type, no name at all, or one of those who were here. */
    private Region asking() {
        TextField name = field("learner-name", texts.text("learner.nameLabel"));
        Button go = Ui.button(texts.text("learner.go"), "sw-primary", () -> named(name));
        go.setId("learner-go");
        name.setOnAction(e -> named(name));
        Button without = Ui.button(texts.text("learner.without"), "sw-second", () -> choose(() -> desk.choose("")));
        without.setId("learner-without");
        VBox box = new VBox(12, Ui.text(texts.text("learner.ask"), "sw-strong"), new FlowPane(8, 8, name, go, without));
        List<Learners.Known> known = desk.learners().list();
        if (!known.isEmpty()) {
            FlowPane all = new FlowPane(8, 8);
            known.forEach(k -> all.getChildren().add(known(k)));
            box.getChildren().addAll(Ui.text(texts.text("learner.known"), "sw-label", "sw-quiet"), all);
        }
        return box;
    }

    private Button known(Learners.Known k) {
        Button button = Ui.button(
                texts.text("learner.card", Notices.name(k.name(), texts), k.finished(), k.open()),
                "",
                () -> choose(() -> desk.chooseKey(k.key())));
        button.setId("learner-" + k.key());
        return button;
    }

    private TextField field(String id, String name) {
        TextField field = new TextField();
        field.setId(id);
        field.setPrefColumnCount(NAME_COLUMNS);
        field.setAccessibleText(name);
        field.setPromptText(name);
        return field;
    }

    private void named(TextField name) {
        if (name.getText().isBlank()) {
            name.requestFocus();
        } else {
            choose(() -> desk.choose(name.getText()));
        }
    }

    /** Something with the files that may be refused. */
    private interface Act {
        void run() throws IOException;
    }

    private void choose(Act act) {
        try {
            act.run();
            chosen.run();
        } catch (RefusedException refused) {
            said.setText(Notices.say(refused.notice(), texts));
        } catch (IOException failed) {
            said.setText(texts.text("record.cannotRead", desk.folder(), String.valueOf(failed.getMessage())));
        }
    }

    /** What can be done with the work of the one who is here. */
    private Region own() {
        LearnerFile file = desk.learner();
        String name = Notices.name(file.name(), texts);
        TextField fresh = field("learner-new-name", texts.text("learner.rename"));
        fresh.setText(file.name());
        Runnable rename = () -> {
            if (!fresh.getText().isBlank()) {
                file.name(fresh.getText());
                changed.run();
            }
        };
        fresh.setOnAction(e -> rename.run());
        Button renameDo = Ui.button(texts.text("learner.renameDo"), "", rename);
        renameDo.setId("learner-rename");
        Button export = Ui.button(texts.text("learner.export"), "", () -> export(file, name));
        export.setId("learner-export");
        Button delete = Ui.button(texts.text("learner.delete"), "", () -> ask(file, name));
        delete.setId("learner-delete");
        boolean mine = file.trouble().isEmpty();
        renameDo.setDisable(!mine);
        delete.setDisable(!mine);
        VBox box = new VBox(
                12,
                Ui.text(texts.text("learner.current", name), "sw-sentence", "sw-strong"),
                new FlowPane(8, 8, fresh, renameDo, export, delete),
                confirm);
        box.getStyleClass().add("sw-hairline-top");
        box.setPadding(new Insets(20, 0, 0, 0));
        return box;
    }

    private void export(LearnerFile file, String name) {
        Path to = picker.save(
                texts.text("learner.exportTitle", name),
                file.key() + ENDING,
                List.of(new Picker.Kind(texts.text("learner.files"), ENDING)));
        if (to != null) {
            try {
                desk.learners().export(file.key(), to);
                tell(texts.text("learner.exported", to));
            } catch (IOException failed) {
                said.setText(
                        texts.text("learner.exportFailed", to, failed.getClass().getSimpleName()));
            }
        }
    }

    private void tell(String words) {
        confirm.getChildren().setAll(Ui.text(words, "sw-safe"));
    }

    /** Names what goes before anything goes. */
    private void ask(LearnerFile file, String name) {
        List<Node> lines = new ArrayList<>();
        lines.add(Ui.text(texts.text("learner.deleteAsk", name), "sw-strong", "sw-danger"));
        try {
            desk.learners()
                    .belongings(file.key())
                    .forEach(f -> lines.add(Ui.text(String.valueOf(f.getFileName()), "sw-label")));
        } catch (IOException unreadable) {
            said.setText(texts.text("record.cannotRead", desk.folder(), String.valueOf(unreadable.getMessage())));
            return;
        }
        Button yes = Ui.button(texts.text("learner.deleteYes"), "", this::delete);
        yes.setId("learner-delete-yes");
        Button no = Ui.button(texts.text("learner.deleteNo"), "sw-second", () -> confirm.getChildren()
                .clear());
        no.setId("learner-delete-no");
        lines.add(new HBox(8, no, yes));
        confirm.getChildren().setAll(lines);
        no.requestFocus();
    }

    private void delete() {
        try {
            desk.delete();
            changed.run();
        } catch (IOException failed) {
            said.setText(texts.text("learner.deleteFailed", Objects.toString(failed.getMessage(), "?")));
        }
    }
}
