package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drills that leave the range of an equation only once they are played. */
class TrialPlayTest {
    private static final Edited DRILL = Edited.shipped("scenarios/hungry-second-week.yaml");

    @TempDir
    Path folder;

    private List<Fault> played(Edited drill) throws Exception {
        Path file = folder.resolve("hungry-second-week.yaml");
        Files.writeString(file, drill.text());
        assertThat(ContentFiles.at(List.of(file)).check())
                .as("before it is played")
                .isEmpty();
        return ContentFiles.at(List.of(file)).checkAndPlay();
    }

    private static void isSaid(List<Fault> faults, Complaint complaint, int line, String... parts) {
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).complaint()).isEqualTo(complaint);
        assertThat(faults.get(0).line()).isEqualTo(line);
        for (String language : Languages.ALL) {
            assertThat(faults.get(0).sentence(language)).contains(parts).doesNotContain("Exception");
        }
    }

    @Test
    void theShippedDrillsStayWithin() {
        assertThat(ContentFiles.at(List.of(Path.of("scenarios"))).checkAndPlay())
                .isEmpty();
    }

    @Test
    void saltOfTheOneBeforeThatMakesBrackishWaterIsBlamedOnItsLine() throws Exception {
        Edited salted = DRILL.with("      saltG: 0", "      saltG: 20000");
        isSaid(
                played(salted),
                Complaint.LEAVES_SALT,
                salted.lineOf("saltG: 20000"),
                "Emerson et al. 1975",
                "g/kg",
                " 5 ");
    }

    @Test
    void saltBeyondAllActivitiesIsSaidByItsEquation() throws Exception {
        Edited brine = DRILL.with("      saltG: 0", "      saltG: 100000");
        isSaid(played(brine), Complaint.LEAVES_RANGE, brine.lineOf("saltG: 100000"), "Davies 1962", "0.5");
    }

    @Test
    void aHeightBeyondTheAtmosphereOfTheTableIsSaidBeforeAnyPlay() throws Exception {
        Edited high = DRILL.with("altitudeM: 0", "altitudeM: 4500");
        Path file = folder.resolve("hungry-second-week.yaml");
        Files.writeString(file, high.text());
        isSaid(
                ContentFiles.at(List.of(file)).check(),
                Complaint.OUT_OF_RANGE,
                high.lineOf("altitudeM"),
                "4500",
                "4000");
    }

    @Test
    void fishBeyondTheirFeedTable() throws Exception {
        Edited big = DRILL.with("count: 240", "count: 4").with("massG: 13.2", "massG: 900");
        List<Fault> faults = played(big);
        isSaid(faults, Complaint.LEAVES_MASS, big.lineOf("massG: 900"), "450 g");
    }

    @Test
    void heatAndColdAreBlamedOnTheSetPointAndPhOnWhatMovesIt() {
        Edited moved = DRILL.with("events: []", "events:\n  - {atDay: 10, kind: set-point, amount: 33}\n")
                .with("bicarbonateG: 0", "bicarbonateG: 900");
        Fields root = Objects.requireNonNull(ScenarioReader.parse(
                                Loaded.of(moved.file(), moved.text().getBytes(StandardCharsets.UTF_8)))
                        .value())
                .root();
        assertThat(new Blame(root, true, 9).line(LeftRange.TEMPERATURE)).isEqualTo(moved.lineOf("setPointC: 27"));
        assertThat(new Blame(root, false, 9).line(LeftRange.TEMPERATURE)).isEqualTo(moved.lineOf("temperatureC: 26"));
        assertThat(new Blame(root, true, 11).line(LeftRange.TEMPERATURE)).isEqualTo(moved.lineOf("amount: 33"));
        assertThat(new Blame(root, true, 1).line(LeftRange.PH)).isEqualTo(moved.lineOf("bicarbonateG: 900"));
        assertThat(new Blame(root, false, 1).line(LeftRange.PH)).isEqualTo(moved.lineOf("alkalinityMgPerL: 110"));
        assertThat(new Blame(root, true, 1).line(LeftRange.SALT)).isEqualTo(moved.lineOf("chlorideMgPerL: 15"));
        assertThat(new Blame(root, true, 9).line(LeftRange.SALT)).isEqualTo(moved.lineOf("saltG: 5000"));
    }
}
