package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    void aHeightBeyondTheAtmosphereOfTheTable() throws Exception {
        Edited high = DRILL.with("altitudeM: 0", "altitudeM: 4500");
        isSaid(played(high), Complaint.LEAVES_ALTITUDE, high.lineOf("altitudeM"), "4500 m", "4000 m");
    }

    @Test
    void fishBeyondTheirFeedTable() throws Exception {
        Edited big = DRILL.with("count: 240", "count: 4").with("massG: 13.2", "massG: 900");
        List<Fault> faults = played(big);
        isSaid(faults, Complaint.LEAVES_MASS, big.lineOf("massG: 900"), "450 g");
    }

    @Test
    void waterWithoutAlkalinityThatTurnsSour() throws Exception {
        Edited sour = DRILL.with("ammoniumChlorideG: 0", "ammoniumChlorideG: 3000")
                .with("alkalinityMgPerL: 110", "alkalinityMgPerL: 5")
                .with("ph: 7.6", "ph: 6.5")
                .with("sourceAlkalinityMgPerL: {uniform: {low: 60, high: 160}}", "sourceAlkalinityMgPerL: {known: 5}");
        assertThat(played(sour)).allSatisfy(f -> assertThat(f.ruleId()).isEqualTo("R38"));
    }
}
