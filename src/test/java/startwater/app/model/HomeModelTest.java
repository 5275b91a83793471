package startwater.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.Desk;
import startwater.app.Desks;
import startwater.content.Complaint;
import startwater.content.Fault;
import startwater.content.Library;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.rehearse.Examples;
import startwater.rehearse.RehearsalFiles;

/** The shelf beside drills of one's own that come, go and take names. */
class HomeModelTest {
    private static final Library SHIPPED = Library.shipped();

    @TempDir
    private Path folder;

    private Path own;

    @BeforeEach
    void ownDrill() throws IOException {
        own = RehearsalFiles.write(Examples.barrel(), folder.resolve("scenarios/my-barrel.yaml"), null)
                .drill();
    }

    private HomeModel home(Desk desk) {
        return HomeModel.of(SHIPPED, desk.ownDrills(), desk.learner().history(), null);
    }

    private static void begin(Desk desk, Scenario drill) {
        new Attempts(desk.learner()).goOnOrBegin(drill, Entry.Mode.PRACTICE, "en");
    }

    @Test
    void anAttemptWhoseDrillWasTakenAwayIsToldAndGoesOnOnceItIsBack() throws IOException {
        try (Desk desk = Desks.nameless(folder)) {
            begin(desk, ScenarioReader.read(own).get());
            assertThat(home(desk).gone()).isEmpty();
            Path away = Files.move(own, folder.resolve("elsewhere"));
            assertThat(home(desk).gone()).extracting(Entry.Begun::scenario).containsExactly("my-barrel");
            Files.move(away, own);
            assertThat(home(desk).gone()).isEmpty();
            assertThat(home(desk).next()).matches(c -> c != null && c.name().equals("my-barrel") && c.open());
        }
    }

    @Test
    void whatCameWithAHandOutIsToldAsWell() throws IOException {
        try (Desk desk = Desks.nameless(folder)) {
            Scenario drill = ScenarioReader.read(own).get();
            Files.delete(own);
            new Attempts(desk.learner()).goOnOrBegin(drill, Entry.Mode.EXAM, "en", 3, "monday");
            assertThat(home(desk).gone()).extracting(Entry.Begun::handout).containsExactly("monday");
        }
    }

    @Test
    void aDrillOfOnesOwnThatTakesTheNameOfAShippedOneIsNotPlayedInItsPlace() throws IOException {
        Scenario shipped = SHIPPED.scenarios().get(0);
        String yaml = Files.readString(own).replace("id: my-barrel", "id: " + shipped.id());
        Files.writeString(own.resolveSibling(shipped.id() + ".yaml"), yaml);
        try (Desk desk = Desks.nameless(folder)) {
            begin(desk, shipped);
            List<HomeModel.Card> open =
                    home(desk).cards().stream().filter(HomeModel.Card::open).toList();
            assertThat(open).singleElement().matches(card -> shipped.equals(card.scenario()));
            assertThat(home(desk).cards().stream().flatMap(c -> c.faults().stream()))
                    .extracting(Fault::complaint)
                    .containsExactly(Complaint.ID_TAKEN);
        }
    }
}
