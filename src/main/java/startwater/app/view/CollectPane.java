package startwater.app.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.ClassModel;
import startwater.classroom.ClassWords;
import startwater.classroom.Finding;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.classroom.Roster;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The part of the teacher's desk that takes in what a class hands in, checks it, and says what is to be looked at. */
final class CollectPane extends VBox {
    private static final int SAMPLE = 5;

    private final ClassModel model;
    private final ClassWords said;
    private final Texts texts;
    private final ClassView.Desk desk;

    CollectPane(ClassModel model, ClassWords said, ClassView.Desk desk) {
        super(14);
        this.model = model;
        this.said = said;
        this.texts = said.texts();
        this.desk = desk;
        getChildren().addAll(Ui.text(texts.text("desk.collectHow"), "sw-quiet"), handedOut(), buttons());
        if (model.runningProperty().get()) {
            getChildren().add(running());
        }
        Path failed = model.failedProperty().get();
        if (failed != null) {
            getChildren().add(Ui.text(texts.text("class.noFolder", failed), "sw-danger"));
        }
        List<HandedIn> all = model.handedInProperty().get();
        if (!all.isEmpty()) {
            report(all);
        }
        getChildren()
                .addAll(
                        Ui.text(texts.text("privacy.title"), "sw-strong"),
                        Ui.text(texts.text("privacy.body"), "sw-label", "sw-quiet"));
    }

    /** What the files are held against. */
    private Label handedOut() {
        Handout given = model.handoutProperty().get();
        return Ui.text(
                given == null
                        ? texts.text("desk.anyHandout")
                        : texts.text("desk.thisHandout", HandoutPage.name(given, new DrillWords(texts))),
                "sw-label");
    }

    private FlowPane buttons() {
        boolean running = model.runningProperty().get();
        List<HandedIn> all = model.handedInProperty().get();
        boolean named = model.rosterProperty().get() != Roster.NONE;
        FlowPane row = new FlowPane(12, 8);
        row.getChildren()
                .addAll(
                        button("desk.choose", "choose", running, () -> with(desk.folder(), model::collect)),
                        button(
                                "desk.chooseHandout",
                                "choose-handout",
                                running,
                                () -> with(desk.handout(), model::handedOut)),
                        button("desk.again", "again", running || all.isEmpty(), () -> model.markAgain(SAMPLE)),
                        named
                                ? button("desk.pseudonyms", "pseudonyms", running, () -> model.rosterProperty()
                                        .set(Roster.NONE))
                                : button(
                                        "desk.roster",
                                        "roster",
                                        running,
                                        () -> with(desk.roster(), model.rosterProperty()::set)),
                        button("desk.clear", "clear", running || all.isEmpty(), this::clear));
        row.getChildren().get(0).getStyleClass().add("sw-primary");
        return row;
    }

    private Button button(String words, String id, boolean off, Runnable act) {
        Button button = Ui.button(texts.text(words), "", act);
        button.setId(id);
        button.setDisable(off);
        return button;
    }

    private static <T> void with(@Nullable T chosen, java.util.function.Consumer<T> act) {
        if (chosen != null) {
            act.accept(chosen);
        }
    }

    private void clear() {
        try {
            model.clear();
        } catch (IOException kept) {
            getChildren().add(2, Ui.text(texts.text("desk.notCleared"), "sw-danger"));
        }
    }

    private VBox running() {
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText(texts.text("desk.progress"));
        Label words = Ui.text("", "sw-label");
        words.setId("pace");
        ClassModel.Pace now = model.paceProperty().get();
        show(now, bar, words);
        // The listener goes with the page: the page is made anew when the pass ends.
        javafx.beans.value.ChangeListener<ClassModel.Pace> heard = (p, was, is) -> show(is, bar, words);
        bar.getProperties().put("heard", heard);
        model.paceProperty().addListener(new javafx.beans.value.WeakChangeListener<>(heard));
        Button stop = button("desk.stop", "stop", false, model::stop);
        return new VBox(6, words, Ui.row(12, bar, stop));
    }

    private void show(ClassModel.Pace pace, ProgressBar bar, Label words) {
        bar.setProgress(pace.share());
        String key = pace.judging() ? "desk.judged" : "desk.collected";
        String much = texts.text(key, pace.done(), pace.all());
        double left = pace.minutesLeft();
        words.setText(
                !pace.judging() || Double.isNaN(left)
                        ? much
                        : much + " " + texts.text("desk.pace", pace.perMinute(), Math.ceil(left)));
    }

    private void report(List<HandedIn> all) {
        Map<Finding.Status, Long> counts =
                all.stream().collect(Collectors.groupingBy(HandedIn::status, TreeMap::new, Collectors.counting()));
        String counted = counts.entrySet().stream()
                .map(e -> texts.text("class.counts", said.status(e.getKey()), e.getValue()))
                .collect(Collectors.joining(",  "));
        long checked = all.stream().filter(HandedIn::checked).count();
        getChildren()
                .addAll(
                        Ui.text(texts.text("class.files", all.size()) + "  " + counted),
                        Ui.text(texts.text("class.second", checked)),
                        Ui.text(texts.text("class.flagged"), "sw-strong"));
        Roster roster = model.rosterProperty().get();
        VBox odd = new VBox(6);
        all.stream().filter(h -> !h.findings().isEmpty()).forEach(h -> odd.getChildren()
                .add(Ui.text(roster.shown(h.learner()) + " – " + said.findings(h.findings(), roster::shown))));
        if (odd.getChildren().isEmpty()) {
            odd.getChildren().add(Ui.text(texts.text("class.none"), "sw-quiet"));
        }
        getChildren().add(odd);
    }
}
