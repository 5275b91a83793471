package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import startwater.app.Fx;
import startwater.app.model.LessonModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.content.Block;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.text.Language;

/** The live blocks of the lessons that ship, on a real scene without a display. */
class LessonBlocksTest {
    private static final double WIDTH = 900;

    private record Open(Lesson lesson, LessonModel model, LessonView view) {}

    private static Open open(String id, Language language) {
        Lesson lesson = Library.shipped().lesson(id, language.code()).orElseThrow();
        LessonModel model = new LessonModel(id);
        LessonView view = new LessonView(lesson, model, Shell.words(language), drill -> {}, () -> {});
        Scene scene = new Scene(view, WIDTH, 700);
        new Look(Theme.LIGHT, 100).dress(scene);
        view.applyCss();
        view.layout();
        return new Open(lesson, model, view);
    }

    private static List<Node> all(Node node) {
        List<Node> found = new ArrayList<>(List.of(node));
        if (node instanceof javafx.scene.control.ScrollPane pane) {
            found.addAll(all(pane.getContent()));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> found.addAll(all(child)));
        }
        return found;
    }

    private static <T> List<T> all(Open open, Class<T> kind) {
        return all(open.view()).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void everyLessonOpensInBothLanguages() {
        for (Language language : Language.values()) {
            for (Lesson lesson : Library.shipped().lessons(language.code())) {
                int figures = (int) lesson.blocks().stream()
                        .filter(Block.Figure.class::isInstance)
                        .count();
                int drawn = Fx.call(
                        () -> all(open(lesson.id(), language), FigureView.class).size());
                assertThat(drawn).as(lesson.id()).isEqualTo(figures);
            }
        }
    }

    @Test
    void aSliderMovesWhatTheFigureSays() {
        List<String> said = Fx.call(() -> {
            Open open = open("07-when-will-it-peak", Language.EN);
            FigureView figure = all(open, FigureView.class).get(0);
            Label sentence = (Label) figure.getChildren().get(0);
            Slider slider = all(open, Slider.class).get(0);
            String before = sentence.getText();
            slider.setValue(slider.getValue() < slider.getMax() ? slider.getMax() : slider.getMin());
            return List.of(before, sentence.getText());
        });
        assertThat(said.get(1)).isNotBlank().isNotEqualTo(said.get(0));
    }

    @Test
    void aPredictionIsToldOnceAndThenStands() {
        Fx.run(() -> {
            Open open = open("04-change-water", Language.EN);
            Button commit = all(open, Button.class).stream()
                    .filter(button -> "predict-commit".equals(button.getId()))
                    .findFirst()
                    .orElseThrow();
            assertThat(commit.isDisabled()).as("nothing is said yet").isTrue();
            int place = open.lesson()
                    .blocks()
                    .indexOf(open.lesson().blocks().stream()
                            .filter(Block.Predict.class::isInstance)
                            .findFirst()
                            .orElseThrow());
            open.model().picked(place, "block").set(0);
            open.model().picked(place, "sure").set(2);
            assertThat(commit.isDisabled()).isFalse();
            commit.fire();
            assertThat(commit.isDisabled()).as("there is no way back").isTrue();
            Block.Predict predict = (Block.Predict) open.lesson().blocks().get(place);
            assertThat(all(open, Label.class))
                    .anySatisfy(label -> assertThat(label.getText()).contains(predict.because()));
        });
    }

    @Test
    void aStripIsMarkedInBlocks() {
        Fx.run(() -> {
            Open open = open("02-read-a-strip", Language.EN);
            StripExercise strip = all(open, StripExercise.class).get(0);
            all(strip).stream()
                    .filter(Button.class::isInstance)
                    .map(Button.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .fire();
            assertThat(all(strip).stream().filter(Label.class::isInstance).map(node -> ((Label) node).getText()))
                    .anySatisfy(text -> assertThat(text).contains("you read"));
        });
    }

    /** For looking at: two lessons as they stand. */
    @Test
    void picturesGoToTheGallery() throws IOException {
        Path gallery = Files.createDirectories(Path.of("target/gallery"));
        for (String id : List.of("02-read-a-strip", "05-nitrite-and-salt", "06-the-cycle")) {
            Path file = gallery.resolve("lesson-" + id + ".png");
            Fx.run(() -> {
                Open open = open(id, Language.EN);
                Region page = (Region)
                        all(open, javafx.scene.control.ScrollPane.class).get(0).getContent();
                WritableImage shot = page.snapshot(null, null);
                int width = (int) shot.getWidth();
                int height = (int) shot.getHeight();
                int[] pixels = new int[width * height];
                shot.getPixelReader()
                        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
                BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
                copy.setRGB(0, 0, width, height, pixels, 0, width);
                try {
                    ImageIO.write(copy, "png", file.toFile());
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            });
            assertThat(Files.size(file)).isGreaterThan(10_000);
        }
    }
}
