package startwater.app.view;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.Insets;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.ClassExport;
import startwater.app.model.ClassModel;
import startwater.classroom.Attempt;
import startwater.classroom.ClassWords;
import startwater.classroom.Collector;
import startwater.classroom.Handout;
import startwater.classroom.Roster;
import startwater.drill.Scenario;
import startwater.page.Paper;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The teacher's desk: hand out, collect, learners by skills, decisions, files to print and to keep. */
public final class ClassView extends BorderPane {
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
        DECISIONS("decisions"),
        PAPER("paper");

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

        /** The roster that the teacher picks, or null. */
        @Nullable
        Roster roster();

        /** Keeps something of the class in a file that the teacher picks. */
        void export(ClassExport export, List<Attempt> attempts, Roster roster, Paper paper);

        /** Keeps a drill's sheet for learners in a file that the teacher picks. */
        void worksheet(Scenario drill, Paper paper);

        /** Keeps a drill's sheet for teachers. @param key whether to say what options are worth; takes some seconds */
        void teacherSheet(Scenario drill, boolean key, Paper paper);

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
        model.handoutProperty().addListener(told);
        model.rosterProperty().addListener(told);
        open(Part.HAND_OUT);
    }

    /** Shows a part. */
    public void open(Part wanted) {
        part = wanted;
        parts.select(wanted);
        List<Attempt> attempts = Collector.counting(model.handedInProperty().get());
        Roster roster = model.rosterProperty().get();
        VBox page =
                switch (wanted) {
                    case HAND_OUT -> giving;
                    case COLLECT -> new CollectPane(model, said, desk);
                    case LEARNERS -> ClassTables.learners(attempts, roster, said, ZoneId.systemDefault());
                    case DECISIONS -> ClassTables.decisions(attempts, words, said, desk);
                    case PAPER -> new PaperPane(drills, attempts, roster, words, desk);
                };
        page.setPadding(new Insets(0, 24, 24, 32));
        setCenter(Ui.scroll(page));
    }
}
