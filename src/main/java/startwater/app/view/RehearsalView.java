package startwater.app.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.RehearsalModel;
import startwater.app.theme.Look;
import startwater.page.Pdf;
import startwater.rehearse.Entry;
import startwater.rehearse.Rehearsal;
import startwater.rehearse.RehearseTexts;
import startwater.text.Language;
import startwater.text.Texts;

/**
 * Rehearsing one's own system: at the left the form with the help of the line in focus, at the right what to expect. All state
 * is in the model, so the view may be made anew at any time.
 */
public final class RehearsalView extends BorderPane {
    /** The language files it needs beside those of {@link Shell}. */
    static final String[] WORDS = {RehearseTexts.FILE, RehearseTexts.FORM, "/startwater/app/text/rehearsal"};

    private static final double FORM_PERCENT = 42;
    /** Room that form and outlook need beside each other, in design pixels. */
    private static final double SIDE_BY_SIDE_PX = 660;

    private final RehearsalModel model;
    private final Texts texts;
    private final Actions actions;
    private final OutlookPane outlook;
    private final VBox formHolder = new VBox();
    private final VBox helping = new VBox(2);
    private final VBox tools = new VBox(8);
    private final GridPane both = new GridPane();
    private final ScrollPane formPlace = Ui.scroll(new VBox());
    private final ScrollPane outlookPlace = Ui.scroll(new VBox());
    private final ScrollPane onePlace = Ui.scroll(new VBox());
    private final InvalidationListener changed = property -> stale();
    private boolean stacked;
    private final Label helpTitle = Ui.text("", "sw-strong");
    private final Label help = Ui.text("");
    private final Label said = Ui.text("", "sw-label", "sw-quiet");
    private final ProgressBar progress = new ProgressBar(0);
    private final Button expect;
    private final Button stop;
    private RehearsalForm form;
    private Background.@Nullable Work work;

    /**
     * What the window does with what was written.
     *
     * @param play plays the drill of a file
     * @param show opens a page to print, in the browser
     */
    public record Actions(Consumer<Path> play, Consumer<Path> show) {}

    /** @param texts the words of the shell with those of {@link #WORDS} */
    public RehearsalView(RehearsalModel model, Texts texts, Actions actions) {
        this.model = model;
        this.texts = texts;
        this.actions = actions;
        this.form = new RehearsalForm(model, texts, this::help, this::fresh);
        this.outlook = new OutlookPane(texts, this::correct);
        this.expect = Ui.button(texts.text("rehwin.expect"), "sw-primary", this::reckon);
        this.stop = Ui.button(texts.text("rehwin.stop"), "", this::stop);
        expect.setId("expect");
        stop.setId("stop");
        progress.setAccessibleText(texts.text("rehwin.working", Rehearsal.TANKS));
        said.setId("said");
        setTop(head());
        both.getColumnConstraints().addAll(column(FORM_PERCENT), column(100 - FORM_PERCENT));
        RowConstraints all = new RowConstraints();
        all.setVgrow(Priority.ALWAYS);
        both.getRowConstraints().add(all);
        helping();
        tools();
        outlookPlace.setId("outlook-scroll");
        formPlace.setId("form");
        onePlace.setId("one");
        arrange();
        widthProperty().addListener((p, was, is) -> arrange());
        outlook.show(model.resultProperty().get());
        working(false);
        stale();
        // The model outlives this page, which is made anew with every change of language or size.
        model.formProperty().addListener(new WeakInvalidationListener(changed));
    }

    private void stale() {
        if (model.stale()) {
            said.setText(texts.text("rehwin.stale"));
        }
    }

    /** The words this view and the shell need together. */
    static Texts texts(Language language) {
        return Texts.of(
                language,
                Stream.concat(Stream.of(Shell.WORDS), Stream.of(WORDS)).toArray(String[]::new));
    }

    private static ColumnConstraints column(double percent) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(percent);
        column.setFillWidth(true);
        return column;
    }

    private FlowPane head() {
        FlowPane head = new FlowPane(
                16, 8, Ui.text(texts.text("rehwin.title"), "sw-title"), RehearsalForm.units(model, texts, this::fresh));
        head.setRowValignment(javafx.geometry.VPos.CENTER);
        head.setPadding(new Insets(12, 24, 8, 24));
        head.getStyleClass().add("sw-hairline-bottom");
        return head;
    }

    /** Side by side; one below the other, in one page that scrolls, where large text leaves no room. */
    private void arrange() {
        boolean now = getWidth() > 0
                && getWidth() < SIDE_BY_SIDE_PX * Look.of(getScene()).scale();
        if (getCenter() != null && now == stacked) {
            return;
        }
        stacked = now;
        both.getChildren().clear();
        formPlace.setContent(null);
        outlookPlace.setContent(null);
        onePlace.setContent(null);
        if (stacked) {
            VBox page = new VBox(12, formHolder, helping, tools, outlook);
            page.setPadding(new Insets(8, 16, 12, 24));
            onePlace.setContent(page);
            setCenter(onePlace);
            return;
        }
        formPlace.setContent(formHolder);
        outlookPlace.setContent(outlook);
        VBox left = new VBox(8, formPlace, helping);
        left.setPadding(new Insets(8, 8, 12, 24));
        VBox right = new VBox(8, tools, outlookPlace);
        right.setPadding(new Insets(12, 8, 12, 16));
        right.getStyleClass().add("sw-hairline-left");
        VBox.setVgrow(formPlace, Priority.ALWAYS);
        VBox.setVgrow(outlookPlace, Priority.ALWAYS);
        both.add(left, 0, 0);
        both.add(right, 1, 0);
        setCenter(both);
    }

    private void helping() {
        formHolder.getChildren().setAll(form);
        helpTitle.setText(texts.text("rehwin.helpTitle"));
        help.setText(texts.text("rehwin.helpNone"));
        help.setId("help");
        helping.getChildren().addAll(helpTitle, help);
        helping.setPadding(new Insets(8, 12, 10, 12));
        helping.getStyleClass().add("sw-wash");
        helping.setMinHeight(USE_PREF_SIZE);
    }

    private void tools() {
        Button save = Ui.button(texts.text("rehwin.save"), "", this::save);
        Button play =
                Ui.button(texts.text("rehwin.play"), "", () -> written(model::save, actions.play(), "rehwin.saved"));
        Button print = Ui.button(
                texts.text("rehwin.print"),
                "",
                () -> written(() -> model.list(texts, ".html"), actions.show(), "rehwin.listed"));
        Button pdf = Ui.button(
                texts.text("rehwin.pdf"),
                "",
                () -> written(() -> model.list(texts, Pdf.ENDING), actions.show(), "rehwin.listed"));
        pdf.setId("pdf");
        save.setId("save");
        play.setId("play");
        print.setId("print");
        FlowPane buttons = new FlowPane(8, 8, expect, stop, progress, save, play, print, pdf);
        buttons.setRowValignment(javafx.geometry.VPos.CENTER);
        outlook.setPadding(new Insets(4, 16, 12, 0));
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        tools.getChildren().addAll(buttons, said);
    }

    /** Opens a line of the form and gives it the focus. */
    void correct(Entry entry) {
        form.show(entry);
        ScrollPane place = stacked ? onePlace : formPlace;
        form.applyCss();
        place.layout();
        form.reach(entry, place);
    }

    private void help(Entry entry) {
        helpTitle.setText(texts.text("rehwin.helpTitle") + ": " + texts.text("reh.label." + entry.key()));
        help.setText(texts.text("reh.help." + entry.key()));
    }

    /** The form anew, in other units or with other answers. */
    private void fresh() {
        form = new RehearsalForm(model, texts, this::help, this::fresh);
        formHolder.getChildren().setAll(form);
    }

    private void reckon() {
        working(true);
        said.setText(texts.text("rehwin.working", Rehearsal.TANKS));
        work = Background.run(
                () -> Optional.ofNullable(model.reckon(
                        done -> Platform.runLater(() -> progress.setProgress(Math.max(progress.getProgress(), done))))),
                reckoned -> reckoned.ifPresent(result -> {
                    working(false);
                    model.show(result);
                    outlook.show(result);
                    said.setText(texts.text(model.stale() ? "rehwin.stale" : "rehwin.done"));
                }));
    }

    private void stop() {
        if (work != null) {
            work.cancel();
        }
        model.cancel();
        working(false);
        said.setText(texts.text("rehwin.stopped"));
        expect.requestFocus();
    }

    private void working(boolean now) {
        progress.setProgress(0);
        for (javafx.scene.Node node : new javafx.scene.Node[] {stop, progress}) {
            node.setVisible(now);
            node.setManaged(now);
        }
        expect.setDisable(now);
    }

    private void save() {
        written(model::save, file -> {}, "rehwin.saved");
    }

    /** Writes something of the last outlook and hands it on; says why where it cannot. */
    private void written(Callable<Path> write, Consumer<Path> then, String key) {
        if (!model.ready()) {
            said.setText(texts.text(model.stale() ? "rehwin.stale" : "rehwin.first"));
            return;
        }
        Background.write(() -> written(write), file -> {
            said.setText(file.map(f -> texts.text(key, f)).orElseGet(() -> texts.text("rehwin.cannotWrite")));
            file.ifPresent(then);
        });
    }

    private static Optional<Path> written(Callable<Path> write) {
        try {
            return Optional.of(write.call());
        } catch (IOException e) {
            return Optional.empty();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
