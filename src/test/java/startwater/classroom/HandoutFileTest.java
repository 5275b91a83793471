package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import startwater.content.ContentHash;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;
import startwater.record.Entry;

/** Hand-outs out and in, and files that only look like one. */
class HandoutFileTest {
    private static final String SHIPPED = "hungry-second-week";

    private static Handout shipped() {
        return new Handout(
                "monday-1",
                "Nitrite and salt",
                Entry.Mode.EXAM,
                "Friday noon",
                true,
                7,
                List.of(new Handout.Drill(Pupils.drill(SHIPPED), null)),
                List.of("05-nitrite-and-salt"));
    }

    private static Handout own() {
        try {
            String yaml = HandoutFile.travelling(Files.readString(Path.of("scenarios", SHIPPED + ".yaml")))
                    .replace("id: " + SHIPPED, "id: our-own-tank");
            Scenario scenario = ScenarioReader.read("our-own-tank.yaml", yaml.getBytes(StandardCharsets.UTF_8))
                    .get();
            return new Handout(
                    "own",
                    "Own",
                    Entry.Mode.PRACTICE,
                    "",
                    false,
                    3,
                    List.of(new Handout.Drill(scenario, yaml)),
                    List.of());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static HandoutFile.Read read(String text) {
        return HandoutFile.read(text.getBytes(StandardCharsets.UTF_8), "en");
    }

    @Test
    void aHandoutComesBackAsItWentOut() {
        for (Handout h : List.of(shipped(), own())) {
            assertThat(read(HandoutFile.text(h)).found()).contains(h);
        }
    }

    @Test
    void theFileIsSmallAndADrillOfOnesOwnTravelsInIt() {
        assertThat(HandoutFile.text(shipped()).length()).isLessThan(1_000);
        assertThat(HandoutFile.text(own()).length()).isLessThan(6_000);
        Handout back = read(HandoutFile.text(own())).found().orElseThrow();
        assertThat(ContentHash.of(back.drills().get(0).scenario()))
                .isEqualTo(ContentHash.of(own().drills().get(0).scenario()));
    }

    @Test
    void everyShippedDrillReadsAlikeWithoutItsNote() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            for (Path file : files.toList()) {
                String bare = HandoutFile.travelling(Files.readString(file));
                assertThat(ContentHash.of(ScenarioReader.read(
                                        file.getFileName().toString(), bare.getBytes(StandardCharsets.UTF_8))
                                .get()))
                        .isEqualTo(ContentHash.of(ScenarioReader.read(file).get()));
            }
        }
    }

    @Test
    void oneTankForAllOrOneEach() {
        Handout each = new Handout("x", "", Entry.Mode.EXAM, "", false, 7, List.of(), List.of());
        Set<Long> tanks = IntStream.range(0, 200)
                .mapToObj(i -> each.variant(new UUID(i, i).toString()))
                .collect(Collectors.toSet());
        assertThat(tanks).hasSize(200).allMatch(v -> v >= 0);
        assertThat(each.variant("a")).isEqualTo(each.variant("a"));
        assertThat(shipped().variant("a")).isEqualTo(7).isEqualTo(shipped().variant("b"));
        assertThat(new HashSet<>(List.of(
                        each.variant("a"),
                        new Handout("y", "", Entry.Mode.EXAM, "", false, 7, List.of(), List.of()).variant("a"))))
                .hasSize(2);
    }

    @TestFactory
    Stream<DynamicTest> whatIsNoHandoutIsSaidWithItsReason() {
        String sound = HandoutFile.text(shipped());
        Map<String, Object[]> cases = new LinkedHashMap<>();
        cases.put("empty", new Object[] {"", HandoutFile.Trouble.NOT_JSON});
        cases.put("a list", new Object[] {"[]", HandoutFile.Trouble.NOT_JSON});
        cases.put("cut off", new Object[] {sound.substring(0, 80), HandoutFile.Trouble.NOT_JSON});
        cases.put("too big", new Object[] {" ".repeat(HandoutFile.MOST_BYTES + 1), HandoutFile.Trouble.TOO_BIG});
        cases.put(
                "deep",
                new Object[] {"{\"a\":" + "[".repeat(5_000) + "]".repeat(5_000) + "}", HandoutFile.Trouble.NOT_JSON});
        cases.put("newer", new Object[] {sound.replace("\"format\" : 1", "\"format\" : 2"), HandoutFile.Trouble.NEWER});
        cases.put("no seed", new Object[] {sound.replace("\"seed\"", "\"sead\""), HandoutFile.Trouble.BAD_FIELD});
        cases.put(
                "a seed in words",
                new Object[] {sound.replace("\"seed\" : 7", "\"seed\" : \"7\""), HandoutFile.Trouble.BAD_FIELD});
        cases.put(
                "an id that is a path",
                new Object[] {sound.replace("monday-1", "../../x"), HandoutFile.Trouble.BAD_FIELD});
        cases.put(
                "a drill that is a path",
                new Object[] {sound.replace("\"" + SHIPPED, "\"../" + SHIPPED), HandoutFile.Trouble.BAD_FIELD});
        cases.put(
                "another drill", new Object[] {sound.replace(SHIPPED, "no-such-drill"), HandoutFile.Trouble.NO_DRILL});
        cases.put("a drill that has changed", new Object[] {
            sound.replaceFirst("\"content\" : \"..", "\"content\" : \"zz"), HandoutFile.Trouble.OTHER_DRILL
        });
        cases.put(
                "a mode there is not",
                new Object[] {sound.replace("\"exam\"", "\"party\""), HandoutFile.Trouble.BAD_FIELD});
        cases.put(
                "a lesson that is a path",
                new Object[] {sound.replace("05-nitrite-and-salt", "/etc/passwd"), HandoutFile.Trouble.BAD_FIELD});
        cases.put(
                "a broken drill of one's own",
                new Object[] {HandoutFile.text(own()).replace("volumeL", "volumeX"), HandoutFile.Trouble.BAD_DRILL});
        cases.put("a type to be made", new Object[] {
            sound.replace("{\n", "{\n\"@class\":\"java.io.File\",\n").replace("\"seed\"", "\"x\""),
            HandoutFile.Trouble.BAD_FIELD
        });
        return cases.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
                    HandoutFile.Read read = read((String) e.getValue()[0]);
                    assertThat(read.found()).isEmpty();
                    assertThat(read.trouble()).isEqualTo(e.getValue()[1]);
                }));
    }

    @Test
    void wordsFromAFileCannotMoveTheCursor() {
        String text = HandoutFile.text(shipped()).replace("Nitrite and salt", "\\u001b[2JNitrite\\u202e x\\u0007");
        assertThat(read(text).found().orElseThrow().title()).isEqualTo("[2JNitrite x");
    }
}
