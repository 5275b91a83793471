package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import startwater.drill.Prior;
import startwater.drill.Scenario;

class ContentHashTest {
    private static final Edited GOOD = Edited.shipped("scenarios/hungry-second-week.yaml");

    private static Scenario read(Edited edited) {
        return ScenarioReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8))
                .get();
    }

    @Test
    void theLookOfTheFileDoesNotCount() {
        String hash = ContentHash.of(read(GOOD));
        assertThat(hash).matches("[0-9a-f]{64}");
        assertThat(ContentHash.of(read(GOOD.with("schema: 1", "# a comment\nschema: 1  # another"))))
                .isEqualTo(hash);
        assertThat(ContentHash.of(read(GOOD.with("volumeL: 2400", "volumeL: 2.4e3"))))
                .isEqualTo(hash);
        assertThat(ContentHash.of(read(
                        GOOD.with("  volumeL: 2400\n  media: moving-bed", "  media: moving-bed\n  volumeL: 2400"))))
                .isEqualTo(hash);
    }

    @Test
    void everyChangeOfContentCounts() {
        List<Scenario> all = List.of(
                read(GOOD),
                read(GOOD.with("volumeL: 2400", "volumeL: 2401")),
                read(GOOD.with("title: The hungry", "title: One hungry")),
                read(GOOD.with("rules: [5, 3]", "rules: [3, 5]")),
                read(GOOD.with("median: 0.003,", "median: 0.0031,")),
                read(GOOD.with("{uniform: {low: 12, high: 18}}", "{normal: {mean: 15, sd: 1}}")),
                read(GOOD.with("oxygenMeter: true", "oxygenMeter: false")),
                read(GOOD.with("away: []", "away: [{fromDay: 10, toDay: 11}]")),
                read(GOOD.with("events: []", "events: [{atDay: 9, kind: air-off, hours: 1}]")));
        Set<String> hashes = new HashSet<>();
        all.forEach(scenario -> hashes.add(ContentHash.of(scenario)));
        assertThat(hashes).hasSameSizeAs(all);
    }

    @Test
    void betterWordsLeaveThePlayAsItWas() {
        String play = ContentHash.ofPlay(read(GOOD));
        assertThat(ContentHash.ofPlay(read(GOOD.with("title: The hungry", "title: One hungry")
                        .with("number: 2", "number: 3")
                        .with("rules: [5, 3]", "rules: [5]"))))
                .isEqualTo(play);
        assertThat(ContentHash.ofPlay(read(GOOD.with("saltG: 5000", "saltG: 4000"))))
                .isNotEqualTo(play);
    }

    /** The form is pinned: were it to change, every mark on disk would lose its drill. Bits of 1.0 by IEEE 754. */
    @Test
    void theCanonicalFormIsPinned() {
        assertThat(ContentHash.canonical(new Prior.Uniform(-0.0, 1), Set.of()))
                .isEqualTo("Uniform(low=d0000000000000000high=d3ff0000000000000)");
        assertThat(ContentHash.canonical(Map.of("b", List.of(1, true), "a", "x:y"), Set.of()))
                .isEqualTo("{String1:aString3:x:yString1:b[Integer1:1Boolean4:true]}");
    }

    @Test
    void textsThatRunTogetherStayApart() {
        assertThat(ContentHash.canonical(List.of("ab", "c"), Set.of()))
                .isNotEqualTo(ContentHash.canonical(List.of("a", "bc"), Set.of()));
    }
}
