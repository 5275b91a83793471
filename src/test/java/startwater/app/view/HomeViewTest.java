package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.app.Desk;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.app.model.HomeModel;
import startwater.app.model.HomeNext;
import startwater.app.model.ProgressModel;
import startwater.content.CourseShelf;
import startwater.content.Library;
import startwater.content.ScenarioReader;
import startwater.record.Attempts;
import startwater.record.CourseHistory;
import startwater.record.Entry;
import startwater.rehearse.Examples;
import startwater.rehearse.RehearsalFiles;
import startwater.text.DrillWords;
import startwater.text.Language;

/** Home when the coach answers, and when a drill that was left half way is not there any more. */
class HomeViewTest {
    private static final Library SHIPPED = Library.shipped();

    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    private HomeView open(Language language, Desk desk) {
        return Fx.call(() -> {
            DrillWords words = Shell.words(language);
            HomeModel model =
                    HomeModel.of(SHIPPED, desk.ownDrills(), desk.learner().history(), null);
            HomeView home = new HomeView(model, words, new CoachWords(words, SHIPPED), s -> {}, lesson -> {}, () -> {});
            stage = new Stage();
            HBox.setHgrow(home, Priority.ALWAYS);
            stage.setScene(new Scene(new HBox(new Button("before"), home), 1280, 800));
            stage.show();
            home.applyCss();
            home.layout();
            return home;
        });
    }

    @AfterEach
    void close() {
        Fx.run(stage::close);
    }

    private static HomeNext said(Desk desk) {
        return ProgressModel.of(
                        CourseShelf.of(SHIPPED),
                        CourseHistory.of(desk.learner().history()),
                        LocalDate.of(2026, 11, 27),
                        ZoneOffset.UTC,
                        1)
                .next()
                .orElseThrow();
    }

    @Test
    void whatTheCoachSaysComesInWithoutMovingTheKeysOrTheShelf() {
        try (Desk desk = Desks.nameless(folder)) {
            HomeView home = open(Language.EN, desk);
            Button card = Fx.call(() ->
                    (Button) home.lookup("#card-" + SHIPPED.scenarios().get(3).id()));
            Fx.run(card::requestFocus);
            assertThat(Fx.<Node>call(() -> home.lookup("#start"))).isNull();
            Fx.run(() -> home.coachSays(said(desk)));
            assertThat(Fx.<Node>call(() -> home.lookup("#start"))).isNotNull();
            assertThat(Fx.<Node>call(() -> home.getScene().getFocusOwner())).isSameAs(card);
            Button start = Fx.call(() -> (Button) home.lookup("#start"));
            Fx.run(() -> {
                start.requestFocus();
                home.coachSays(said(desk));
            });
            assertThat(Fx.<String>call(() -> home.getScene().getFocusOwner().getId()))
                    .isEqualTo("start");
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void aDrillThatWasTakenAwayIsNamedWithWhatToDo(Language language) throws IOException {
        Path own = RehearsalFiles.write(Examples.barrel(), folder.resolve("scenarios/my-barrel.yaml"), null)
                .drill();
        try (Desk desk = Desks.nameless(folder)) {
            new Attempts(desk.learner()).goOnOrBegin(ScenarioReader.read(own).get(), Entry.Mode.PRACTICE, "en");
            Files.delete(own);
            HomeView home = open(language, desk);
            assertThat(Fx.<List<String>>call(() -> home.lookupAll("#gone-my-barrel").stream()
                            .map(n -> ((Label) n).getText())
                            .toList()))
                    .singleElement()
                    .asString()
                    .contains("my-barrel.yaml", desk.ownDrills().toString());
        }
    }
}
