package startwater.app.view;

import java.util.stream.Collectors;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
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
    private static final String SLIM = "-fx-padding: 0 16 0 16;";
    private static final double LETTER_PERCENT = 5;
    private static final double WORDS_PERCENT = 50;
    private static final double HANDS_PERCENT = 8;
    private static final double KEYS_PERCENT = 24;

    private final ProjectorModel model;
    private final DrillWords words;
    private final Texts texts;
    private final BorderPane page = new BorderPane();
    private final GridPane rows = new GridPane();
    private final Label total = Ui.text("");

    /** @param words with the words of a class among them @param close leaves it */
    public ProjectorView(ProjectorModel model, DrillWords words, Runnable close) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        // Not on this node itself: where it is the root, the look writes its own size over it.
        page.setStyle(LARGE);
        page.setPadding(new Insets(10, 28, 8, 28));
        getChildren().add(page);
        rows.setVgap(2);
        rows.setHgap(12);
        page.setCenter(Ui.scroll(rows));
        Button reveal = Ui.button(texts.text("proj.reveal"), "sw-primary", model::reveal);
        reveal.setId("reveal");
        reveal.disableProperty().bind(model.revealedProperty());
        Button back = Ui.button(texts.text("proj.close"), "", close);
        back.setId("close-projector");
        reveal.setStyle("-fx-font-size: 1em; -fx-padding: 4 20 4 20;");
        back.setStyle("-fx-padding: 4 20 4 20;");
        HBox bottom = Ui.row(24, total, Ui.grow(), back, reveal);
        bottom.setPadding(new Insets(8, 0, 0, 0));
        page.setBottom(bottom);
        model.revealedProperty().addListener((p, was, is) -> show());
        model.handsProperty().addListener((p, was, is) -> show());
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        show();
    }

    /** While hands are counted the words have most of the room; then what each option is worth shares it. */
    private void columns(boolean open) {
        rows.getColumnConstraints().clear();
        double[] percents = open
                ? new double[] {LETTER_PERCENT, WORDS_PERCENT - HANDS_PERCENT, HANDS_PERCENT}
                : new double[] {LETTER_PERCENT, 100 - LETTER_PERCENT - KEYS_PERCENT};
        for (double percent : percents) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(percent);
            rows.getColumnConstraints().add(column);
        }
        ColumnConstraints last = new ColumnConstraints();
        last.setHgrow(Priority.ALWAYS);
        last.setHalignment(HPos.RIGHT);
        rows.getColumnConstraints().add(last);
    }

    /** What was seen and read; once all is revealed the room knows what was seen, and the options need its place. */
    private VBox facts(boolean open) {
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
        if (open) {
            facts.getChildren().remove(1);
        }
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
        Keys.keep(this, this::make);
    }

    private void make() {
        rows.getChildren().clear();
        boolean fish = model.scenario().fish() != null;
        boolean open = model.revealedProperty().get();
        total.setText(texts.text("proj.hands", model.handsProperty().get()));
        columns(open);
        page.setTop(facts(open));
        int row = 0;
        for (ProjectorModel.Choice c : model.choices()) {
            String said = words.option(c.option().decision(), fish);
            Label letter = Ui.text(String.valueOf(c.letter()), "sw-strong");
            Label what = Ui.text(open && c.best() ? "✓ " + said : said, open && c.best() ? "sw-strong" : "sw-ink");
            rows.add(letter, 0, row);
            rows.add(what, 1, row);
            rows.add(open ? count(c, said) : hands(c, said), 2, row);
            if (open) {
                rows.add(Ui.text(worth(c, fish)), 3, row);
            }
            row++;
        }
    }

    private Label count(ProjectorModel.Choice c, String said) {
        Label count = new Label(Integer.toString(c.hands().get()));
        count.setMinWidth(64);
        count.setAlignment(Pos.CENTER);
        count.setAccessibleText(texts.text("proj.handsFor", c.hands().get(), said));
        return count;
    }

    private HBox hands(ProjectorModel.Choice c, String said) {
        Button less = Ui.button("−", "", () -> model.raise(c.letter(), -1));
        less.setId("less-" + c.letter());
        less.setAccessibleText(texts.text("proj.less", said));
        Button more = Ui.button("+", "", () -> model.raise(c.letter(), 1));
        more.setId("more-" + c.letter());
        more.setAccessibleText(texts.text("proj.more", said));
        less.setStyle(SLIM);
        more.setStyle(SLIM);
        return Ui.row(10, less, count(c, said), more);
    }

    private String worth(ProjectorModel.Choice c, boolean fish) {
        String loss = texts.text("proj.loss", texts.decimals(c.option().loss(), 1));
        return fish ? texts.text("proj.deaths", words.why().deaths(c.option().deaths()), loss) : loss;
    }
}
