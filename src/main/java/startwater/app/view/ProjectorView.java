package startwater.app.view;

import java.util.stream.Collectors;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import startwater.app.model.ProjectorModel;
import startwater.text.DrillWords;
import startwater.text.Texts;

/**
 * One tank for the room: what is seen and read, options by letter, hands counted before anything is revealed. The keys A to
 * E raise a hand, with Shift one less; R reveals. Type is 28 points and up.
 */
public final class ProjectorView extends StackPane {
    private static final String LARGE = "-fx-font-size: 28pt;";
    private static final double LETTER_PERCENT = 6;
    private static final double WORDS_PERCENT = 54;
    private static final double HANDS_PERCENT = 22;

    private final ProjectorModel model;
    private final DrillWords words;
    private final Texts texts;
    private final GridPane rows = new GridPane();
    private final Label total = Ui.text("");

    /** @param words with the words of a class among them @param close leaves it */
    public ProjectorView(ProjectorModel model, DrillWords words, Runnable close) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        // Not on this node itself: where it is the root, the look writes its own size over it.
        BorderPane page = new BorderPane();
        page.setStyle(LARGE);
        page.setPadding(new Insets(16, 28, 16, 28));
        page.setTop(facts());
        getChildren().add(page);
        for (double percent : new double[] {LETTER_PERCENT, WORDS_PERCENT, HANDS_PERCENT}) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(percent);
            rows.getColumnConstraints().add(column);
        }
        ColumnConstraints last = new ColumnConstraints();
        last.setHgrow(Priority.ALWAYS);
        last.setHalignment(HPos.RIGHT);
        rows.getColumnConstraints().add(last);
        rows.setVgap(8);
        rows.setHgap(12);
        page.setCenter(Ui.scroll(rows));
        Button reveal = Ui.button(texts.text("proj.reveal"), "sw-primary", model::reveal);
        reveal.setId("reveal");
        reveal.disableProperty().bind(model.revealedProperty());
        Button back = Ui.button(texts.text("proj.close"), "", close);
        back.setId("close-projector");
        HBox bottom = Ui.row(24, total, Ui.grow(), back, reveal);
        bottom.setPadding(new Insets(8, 0, 0, 0));
        page.setBottom(bottom);
        model.revealedProperty().addListener((p, was, is) -> show());
        model.handsProperty().addListener((p, was, is) -> show());
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        show();
    }

    private VBox facts() {
        String read = model.visit().written().stream()
                .map(w -> words.pad(w.pad()) + " " + words.written(w))
                .collect(Collectors.joining(",  "));
        VBox facts = new VBox(
                4,
                Ui.text(
                        words.scenario(model.scenario()).title() + " – "
                                + words.clock(model.visit().minute()),
                        "sw-strong"),
                Ui.text(String.join(" ", words.sight(model.visit().seen()))),
                Ui.text(read));
        facts.setPadding(new Insets(0, 0, 12, 0));
        return facts;
    }

    private void key(KeyEvent e) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return;
        }
        if (e.getCode() == KeyCode.R) {
            model.reveal();
            e.consume();
        } else if (e.getCode().isLetterKey() && e.getCode().getName().length() == 1) {
            model.raise(e.getCode().getName().charAt(0), e.isShiftDown() ? -1 : 1);
            e.consume();
        }
    }

    private void show() {
        String focused = getScene() == null || getScene().getFocusOwner() == null
                ? ""
                : String.valueOf(getScene().getFocusOwner().getId());
        rows.getChildren().clear();
        boolean fish = model.scenario().fish() != null;
        boolean open = model.revealedProperty().get();
        total.setText(texts.text("proj.hands", model.handsProperty().get()));
        int row = 0;
        for (ProjectorModel.Choice c : model.choices()) {
            String said = words.option(c.option().decision(), fish);
            Label letter = Ui.text(String.valueOf(c.letter()), "sw-strong");
            Label what = Ui.text(open && c.best() ? "✓ " + said : said, open && c.best() ? "sw-strong" : "sw-ink");
            rows.add(letter, 0, row);
            rows.add(what, 1, row);
            rows.add(hands(c, said, open), 2, row);
            if (open) {
                rows.add(Ui.text(worth(c, fish)), 3, row);
            }
            row++;
        }
        if (!focused.isEmpty()) {
            javafx.scene.Node again = lookup("#" + focused);
            if (again != null) {
                again.requestFocus();
            }
        }
    }

    private HBox hands(ProjectorModel.Choice c, String said, boolean open) {
        Label count = new Label(Integer.toString(c.hands().get()));
        count.setMinWidth(64);
        count.setAccessibleText(texts.text("proj.handsFor", c.hands().get(), said));
        Button less = Ui.button("−", "", () -> model.raise(c.letter(), -1));
        less.setId("less-" + c.letter());
        less.setAccessibleText(texts.text("proj.less", said));
        Button more = Ui.button("+", "", () -> model.raise(c.letter(), 1));
        more.setId("more-" + c.letter());
        more.setAccessibleText(texts.text("proj.more", said));
        less.setDisable(open);
        more.setDisable(open);
        return Ui.row(10, less, count, more);
    }

    private String worth(ProjectorModel.Choice c, boolean fish) {
        String loss = texts.text("proj.loss", texts.decimals(c.option().loss(), 1));
        return fish ? texts.text("proj.deaths", words.why().deaths(c.option().deaths()), loss) : loss;
    }
}
