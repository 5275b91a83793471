package startwater.app.view;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.ClassModel;
import startwater.classroom.Attempt;
import startwater.classroom.ClassWords;
import startwater.classroom.Collector;
import startwater.classroom.Finding;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.drill.Scenario;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The teacher's desk: hand out, collect, learners by skills, decisions. */
public final class ClassView extends BorderPane {
    private static final int SAMPLE = 5;

    private final ClassModel model;
    private final DrillWords words;
    private final ClassWords said;
    private final Texts texts;
    private final Desk desk;
    private final List<Scenario> drills;
    private final HandOutPane giving;
    private final Ui.Choice<Part> parts;
    private Part part = Part.HAND_OUT;
    private final InvalidationListener changed = property -> open(part);

    /** The parts of the desk. */
    public enum Part {
        HAND_OUT("handOut"),
        COLLECT("collect"),
        LEARNERS("learners"),
        DECISIONS("decisions");

        private final String key;

        Part(String key) {
            this.key = "desk." + key;
        }
    }

    /** What the desk asks of whoever opened it. */
    public interface Desk {
        /** Keeps a hand-out in a file that the teacher picks. */
        void keep(Handout handout);

        /** The folder that the teacher picks, or null. */
        @Nullable
        Path folder();

        /** A hand-out that the teacher picks, or null for any drill that ships. */
        @Nullable
        Handout handout();

        /** Puts one decision to the room. */
        void debrief(Scenario scenario, long variant, int number);
    }

    /** @param words with the words of a class and of lessons among them */
    public ClassView(ClassModel model, List<Scenario> drills, DrillWords words, Desk desk) {
        this.model = model;
        this.drills = List.copyOf(drills);
        this.words = words;
        this.texts = words.texts();
        this.said = new ClassWords(texts);
        this.desk = desk;
        this.giving = new HandOutPane(this.drills, words, desk);
        this.parts =
                new Ui.Choice<>(texts.text("desk.title"), List.of(Part.values()), p -> texts.text(p.key), this::open);
        VBox top = new VBox(12, Ui.text(texts.text("desk.title"), "sw-title"), parts);
        top.setPadding(new Insets(24, 24, 16, 32));
        setTop(top);
        // The model outlives this page, which is made anew with every change of language or size.
        WeakInvalidationListener told = new WeakInvalidationListener(changed);
        model.handedInProperty().addListener(told);
        model.runningProperty().addListener(told);
        model.failedProperty().addListener(told);
        open(Part.HAND_OUT);
    }

    /** Shows a part. */
    public void open(Part wanted) {
        part = wanted;
        parts.select(wanted);
        List<Attempt> attempts = Collector.counting(model.handedInProperty().get());
        VBox page =
                switch (wanted) {
                    case HAND_OUT -> giving;
                    case COLLECT -> collect();
                    case LEARNERS -> ClassTables.learners(attempts, said, ZoneId.systemDefault());
                    case DECISIONS -> ClassTables.decisions(attempts, words, said, desk);
                };
        page.setPadding(new Insets(0, 24, 24, 32));
        setCenter(Ui.scroll(page));
    }

    private VBox collect() {
        boolean running = model.runningProperty().get();
        List<HandedIn> all = model.handedInProperty().get();
        Button choose = Ui.button(texts.text("desk.choose"), "sw-primary", () -> {
            Path folder = desk.folder();
            if (folder != null) {
                model.collect(folder, desk.handout());
            }
        });
        choose.setId("choose");
        choose.setDisable(running);
        Button again = Ui.button(texts.text("desk.again"), "", () -> model.markAgain(SAMPLE));
        again.setId("again");
        again.setDisable(running || all.isEmpty());
        VBox page = new VBox(14, Ui.text(texts.text("desk.collectHow"), "sw-quiet"), Ui.row(12, choose, again));
        if (running) {
            ProgressBar bar = new ProgressBar();
            bar.progressProperty().bind(model.progressProperty());
            bar.setAccessibleText(texts.text("desk.progress"));
            Button stop = Ui.button(texts.text("desk.stop"), "", model::stop);
            stop.setId("stop");
            page.getChildren().add(Ui.row(12, bar, stop));
        }
        Path failed = model.failedProperty().get();
        if (failed != null) {
            page.getChildren().add(Ui.text(texts.text("class.noFolder", failed), "sw-danger"));
        }
        if (!all.isEmpty()) {
            page.getChildren().addAll(report(all));
        }
        page.getChildren()
                .addAll(
                        Ui.text(texts.text("privacy.title"), "sw-strong"),
                        Ui.text(texts.text("privacy.body"), "sw-label", "sw-quiet"));
        return page;
    }

    private List<javafx.scene.Node> report(List<HandedIn> all) {
        Map<Finding.Status, Long> counts =
                all.stream().collect(Collectors.groupingBy(HandedIn::status, TreeMap::new, Collectors.counting()));
        String counted = counts.entrySet().stream()
                .map(e -> texts.text("class.counts", said.status(e.getKey()), e.getValue()))
                .collect(Collectors.joining(",  "));
        VBox odd = new VBox(6);
        all.stream().filter(h -> !h.findings().isEmpty()).forEach(h -> odd.getChildren()
                .add(Ui.text(h.learner() + " – "
                        + h.findings().stream().map(said::finding).distinct().collect(Collectors.joining(" ")))));
        if (odd.getChildren().isEmpty()) {
            odd.getChildren().add(Ui.text(texts.text("class.none"), "sw-quiet"));
        }
        return List.of(
                Ui.text(texts.text("class.files", all.size()) + "  " + counted),
                Ui.text(texts.text(
                        "class.second", all.stream().filter(HandedIn::checked).count())),
                Ui.text(texts.text("class.flagged"), "sw-strong"),
                odd);
    }
}
