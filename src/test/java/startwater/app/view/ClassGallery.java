package startwater.app.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import startwater.app.Fx;
import startwater.app.model.ClassExport;
import startwater.app.model.ClassModel;
import startwater.classroom.Attempt;
import startwater.classroom.Roster;
import startwater.page.Paper;
import startwater.app.model.ProjectorModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.classroom.ClassWords;
import startwater.classroom.Finding;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.classroom.MarkMemo;
import startwater.classroom.Pupils;
import startwater.classroom.SecondPass;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.score.Judge;
import startwater.text.DrillWords;
import startwater.text.Language;

/** Paints the teacher's desk and the projector to target/gallery. */
final class ClassGallery {
    private static final Path FOLDER = Path.of("target", "gallery");
    private static final String DRILL = "hungry-second-week";

    private ClassGallery() {}

    static List<HandedIn> handedIn() {
        List<HandedIn> all = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            var a = Pupils.attempt("p" + i, DRILL, i % 2 == 0 ? "careful" : "salts-every-reading", i, Entry.Mode.EXAM);
            List<Finding> findings = i == 3 ? List.of(new Finding(Finding.Kind.SAME_TIMES, "p4")) : List.of();
            all.add(new HandedIn("p" + i, "p" + i, a, null, findings, i < 4));
        }
        return all;
    }

    static ClassView desk(Language language) {
        ClassModel model = new ClassModel(
                Runnable::run, Runnable::run, InstantSource.system(), new SecondPass(MarkMemo.inMemory()), 2);
        model.handedInProperty().set(handedIn());
        return new ClassView(
                model, Library.shipped().scenarios(), new DrillWords(ClassWords.texts(language)), new ClassView.Desk() {
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
                });
    }

    static void paintAll() throws IOException {
        Files.createDirectories(FOLDER);
        ProjectorModel question = ProjectorModel.of(Pupils.drill(DRILL), 7, 3, Judge::judge);
        for (Language language : Language.values()) {
            for (Look look :
                    List.of(new Look(Theme.LIGHT, 100), new Look(Theme.DARK, 100), new Look(Theme.LIGHT, 200))) {
                String name =
                        language.code() + "-" + look.theme().name().toLowerCase(Locale.ROOT) + "-" + look.textPercent();
                for (ClassView.Part part : ClassView.Part.values()) {
                    shoot("class-" + part.name().toLowerCase(Locale.ROOT) + "-" + name, look, () -> {
                        ClassView view = desk(language);
                        view.open(part);
                        return view;
                    });
                }
            }
            ProjectorModel fresh = ProjectorModel.of(Pupils.drill(DRILL), 7, 3, c -> question.verdict());
            fresh.raise('A', 6);
            fresh.raise('C', 9);
            DrillWords words = new DrillWords(ClassWords.texts(language));
            Look wall = new Look(Theme.PROJECTOR, 100);
            shoot("projector-ask-" + language.code(), wall, () -> new ProjectorView(fresh, words, () -> {}));
            fresh.reveal();
            shoot("projector-revealed-" + language.code(), wall, () -> new ProjectorView(fresh, words, () -> {}));
        }
    }

    private interface Made {
        Region view();
    }

    private static void shoot(String name, Look look, Made made) throws IOException {
        BufferedImage copy = Fx.call(() -> {
            Region view = made.view();
            Scene scene = new Scene(view, 1280, 800);
            look.dress(scene);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            view.applyCss();
            view.layout();
            WritableImage shot = scene.snapshot(null);
            int width = (int) shot.getWidth();
            int height = (int) shot.getHeight();
            int[] pixels = new int[width * height];
            shot.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
            image.setRGB(0, 0, width, height, pixels, 0, width);
            stage.close();
            return image;
        });
        ImageIO.write(copy, "png", FOLDER.resolve("screen-" + name + ".png").toFile());
    }

    public static void main(String[] args) throws IOException {
        try {
            paintAll();
        } finally {
            javafx.application.Platform.exit();
        }
    }
}
