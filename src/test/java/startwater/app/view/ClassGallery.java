package startwater.app.view;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import startwater.app.Fx;
import startwater.app.model.ClassExport;
import startwater.app.model.ClassModel;
import startwater.app.model.ProjectorModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.app.view.ScreenGallery.Pose;
import startwater.classroom.Attempt;
import startwater.classroom.Finding;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.classroom.MarkMemo;
import startwater.classroom.Pupils;
import startwater.classroom.Roster;
import startwater.classroom.SecondPass;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.page.Paper;
import startwater.record.Entry;
import startwater.score.Judge;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Language;

/** Paints the teacher's desk in its states, a hand-out as a learner sees it, and the projector. */
final class ClassGallery {
    private static final String DRILL = "hungry-second-week";
    private static final double NAV_WIDTH = 208;
    /** A verdict takes its time; one does for all poses. */
    private static @Nullable Verdict verdict;

    private ClassGallery() {}

    static List<HandedIn> handedIn() {
        List<HandedIn> all = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            var a = Pupils.attempt("p" + i, DRILL, i % 2 == 0 ? "careful" : "salts-every-reading", i, Entry.Mode.EXAM);
            List<Finding> findings = i == 3
                    ? List.of(new Finding(Finding.Kind.SAME_TIMES, "p4"))
                    : i == 5 ? List.of(new Finding(Finding.Kind.DAMAGED_LINES, "2")) : List.of();
            all.add(new HandedIn("p" + i, "p" + i, a, null, findings, i < 4));
        }
        return all;
    }

    /** A desk at which files are asked for and nobody answers. */
    private static final class NobodyAnswers implements ClassView.Desk {
        @Override
        public void keep(Handout handout) {}

        @Override
        public @Nullable Path folder() {
            return null;
        }

        @Override
        public @Nullable Handout handout() {
            return null;
        }

        @Override
        public @Nullable Roster roster() {
            return null;
        }

        @Override
        public void export(ClassExport export, List<Attempt> attempts, Roster roster, Paper paper) {}

        @Override
        public void worksheet(Scenario drill, Paper paper) {}

        @Override
        public void teacherSheet(Scenario drill, boolean key, Paper paper) {}

        @Override
        public void debrief(Scenario scenario, long variant, int number) {}
    }

    private static ClassModel model(List<HandedIn> all) {
        ClassModel model = new ClassModel(
                Runnable::run, Runnable::run, InstantSource.system(), new SecondPass(MarkMemo.inMemory()), 2);
        model.handedInProperty().set(all);
        return model;
    }

    static ClassView desk(Language language) {
        return desk(model(handedIn()), language);
    }

    private static ClassView desk(ClassModel model, Language language) {
        return new ClassView(model, Library.shipped().scenarios(), Shell.words(language), new NobodyAnswers());
    }

    static Handout handout() {
        return new Handout(
                "monday",
                "Monday: nitrite and salt",
                Entry.Mode.EXAM,
                "Friday at noon",
                true,
                7,
                List.of(new Handout.Drill(Pupils.drill(DRILL), null)),
                List.of("05-nitrite-and-salt"));
    }

    static void paint(Pose pose, List<String> findings) {
        List<HandedIn> all = handedIn();
        for (ClassView.Part part : ClassView.Part.values()) {
            desk(pose, findings, part.name().toLowerCase(Locale.ROOT), part, model(all));
        }
        desk(pose, findings, "empty", ClassView.Part.COLLECT, model(List.of()));
        desk(pose, findings, "paper-empty", ClassView.Part.PAPER, model(List.of()));
        ClassModel judging = model(all);
        judging.handoutProperty().set(handout());
        judging.runningProperty().set(true);
        judging.paceProperty().set(new ClassModel.Pace(true, 37, 141, 46.4));
        desk(pose, findings, "judging", ClassView.Part.COLLECT, judging);
        DrillWords words = Shell.words(pose.language());
        keep(
                pose,
                findings,
                "handout",
                beside(pose),
                () -> new HandoutPage(handout(), words, Library.shipped(), s -> {}, l -> {}, () -> {}),
                view -> {});
        Pose wall = new Pose(pose.language(), Theme.PROJECTOR, pose.percent(), pose.width());
        for (Pose room : pose.theme() == Theme.LIGHT && pose.percent() == 100 ? List.of(pose, wall) : List.of(pose)) {
            projector(room, words, findings);
        }
    }

    private static double beside(Pose pose) {
        return pose.width() - NAV_WIDTH * new Look(pose.theme(), pose.percent()).scale();
    }

    private static void desk(Pose pose, List<String> findings, String name, ClassView.Part part, ClassModel model) {
        keep(
                pose,
                findings,
                "class-" + name,
                beside(pose),
                () -> {
                    ClassView view = desk(model, pose.language());
                    view.open(part);
                    return view;
                },
                view -> {});
        if (part == ClassView.Part.HAND_OUT || part == ClassView.Part.DECISIONS) {
            keep(
                    pose,
                    findings,
                    "class-" + name + "-bottom",
                    beside(pose),
                    () -> {
                        ClassView view = desk(model, pose.language());
                        view.open(part);
                        return view;
                    },
                    view -> view.lookupAll(".scroll-pane").forEach(n -> ((ScrollPane) n).setVvalue(1)));
        }
    }

    private static void projector(Pose pose, DrillWords words, List<String> findings) {
        if (verdict == null) {
            verdict = ProjectorModel.of(Pupils.drill(DRILL), 7, 3, Judge::judge).verdict();
        }
        Verdict known = verdict;
        ProjectorModel model = ProjectorModel.of(Pupils.drill(DRILL), 7, 3, c -> known);
        String[] states = {"question", "hands", "revealed"};
        for (String state : states) {
            if (state.equals("hands")) {
                model.raise('A', 6);
                model.raise('C', 12);
            } else if (state.equals("revealed")) {
                model.reveal();
            }
            keep(
                    pose,
                    findings,
                    "projector-" + state,
                    pose.width(),
                    () -> new ProjectorView(model, words, () -> {}),
                    view -> {});
        }
    }

    private interface Made {
        Region view();
    }

    private static void keep(
            Pose pose, List<String> findings, String name, double width, Made made, Consumer<Region> before) {
        Fx.run(() -> {
            Region view = made.view();
            BorderPane root = new BorderPane(view);
            root.getStyleClass().add("sw-paper");
            Scene scene = new Scene(root, width, pose.height());
            new Look(pose.theme(), pose.percent()).dress(scene);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            root.applyCss();
            root.layout();
            before.accept(view);
            root.applyCss();
            root.layout();
            ScreenGallery.write(scene, name + "-" + pose.pose(), findings);
            stage.hide();
        });
    }
}
