package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.record.Notice.Kind;

class LearnerFileTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("ana.jsonl");
    }

    private LearnerFile open() throws IOException {
        return LearnerFile.open(file(), Script.means());
    }

    private static void some(LearnerFile file) {
        file.name("Ana");
        file.resolve(null, List.of("ration"), "first");
        file.answer("01-l", List.of("units"), 2, 0, 1, 0, null);
        file.resolve(null, List.of("ration", "units"), "If «x», I salt");
    }

    private byte[] whole() throws IOException {
        try (LearnerFile file = open()) {
            some(file);
            assertThat(file.trouble()).isEmpty();
        }
        return Files.readAllBytes(file());
    }

    private static List<String> lines(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void everyLineIsOnTheDiskAsSoonAsItIsAdded() throws IOException {
        try (LearnerFile file = open()) {
            file.name("Ana");
            assertThat(Files.readAllLines(file())).hasSize(1);
            file.resolve(null, List.of("ration"), "salt");
            assertThat(Files.readAllLines(file())).hasSize(2);
            assertThat(file.history().noteOn(List.of("ration"))).contains("salt");
        }
    }

    @Test
    void cutAnywhereItLosesTheTornLineOnlyAndGoesOn() throws IOException {
        try (LearnerFile file = open()) {
            file.name("Aná");
            file.resolve(null, List.of("ration"), "«x»");
        }
        byte[] bytes = Files.readAllBytes(file());
        List<String> all = lines(bytes);
        for (int cut = 0; cut <= bytes.length; cut++) {
            Path torn = folder.resolve("cut-" + cut + ".jsonl");
            byte[] left = Arrays.copyOf(bytes, cut);
            Files.write(torn, left);
            int kept = 0;
            int end = 0;
            // A line without its line feed is whole all the same.
            while (kept < all.size() && end + all.get(kept).getBytes(StandardCharsets.UTF_8).length <= cut) {
                end += all.get(kept).getBytes(StandardCharsets.UTF_8).length + 1;
                kept++;
            }
            boolean partLeft = cut > end;
            try (LearnerFile file = LearnerFile.open(torn, Script.means(new LooseDisk()))) {
                assertThat(file.notices().stream().map(Notice::kind))
                        .as("cut at %d", cut)
                        .containsExactlyElementsOf(partLeft ? List.of(Kind.SET_ASIDE) : List.of());
                file.resolve(null, List.of("loading"), "after");
            }
            List<String> read = Files.readAllLines(torn);
            assertThat(read.subList(0, read.size() - 1)).as("cut at %d", cut).isEqualTo(all.subList(0, kept));
            assertThat(read.get(read.size() - 1)).contains("after");
            if (partLeft) {
                assertThat(Files.readAllBytes(folder.resolve("cut-" + cut + ".jsonl.damaged-1")))
                        .isEqualTo(Arrays.copyOfRange(left, end, cut));
            }
        }
    }

    @Test
    void aSecondDamagedEndIsSetAsideBesideTheFirst() throws IOException {
        whole();
        for (int n = 1; n <= 2; n++) {
            Files.writeString(file(), "{{{ no\n\0\0\0\n", java.nio.file.StandardOpenOption.APPEND);
            try (LearnerFile file = open()) {
                assertThat(file.notices()).hasSize(1);
                assertThat(file.notices().get(0).parameters().get(1).toString()).endsWith("ana.jsonl.damaged-" + n);
            }
            assertThat(folder.resolve("ana.jsonl.damaged-" + n)).hasContent("{{{ no\n\0\0\0\n");
        }
        assertThat(Files.readAllLines(file())).hasSize(4);
    }

    @Test
    void aDamagedLineInTheMiddleIsToldByItsNumberAndTheRestCounts() throws IOException {
        List<String> lines = new ArrayList<>(lines(whole()));
        lines.set(1, lines.get(1).substring(5));
        Files.write(file(), lines);
        for (int start = 0; start < 2; start++) {
            try (LearnerFile file = open()) {
                assertThat(file.notices()).containsExactly(Notice.of(Kind.DAMAGED_LINE, file().toString(), 2));
                assertThat(file.history().noteOn(List.of("ration"))).contains("If «x», I salt");
                assertThat(file.history().observed()).hasSize(1);
            }
        }
        assertThat(Files.readAllLines(file())).isEqualTo(lines);
    }

    @Test
    void aFileFromANewerProgramIsRefusedAndLeftAlone() throws IOException {
        byte[] bytes = whole();
        String newer =
                new String(bytes, StandardCharsets.UTF_8).replaceFirst("\"format\":1", "\"format\":2") + "{ torn";
        Files.writeString(file(), newer);
        assertThatThrownBy(this::open).isInstanceOfSatisfying(RefusedException.class, e -> assertThat(e.notice())
                .isEqualTo(Notice.of(Kind.NEWER, file().toString(), 2, 1)));
        assertThat(file()).hasContent(newer);
        assertThat(folder.resolve("ana.jsonl.damaged-1")).doesNotExist();
    }

    @Test
    void theSecondToOpenItIsToldAndLooksWithoutWriting() throws IOException {
        byte[] bytes = whole();
        try (LearnerFile first = open();
                LearnerFile second = open()) {
            assertThat(first.trouble()).isEmpty();
            assertThat(second.trouble()).map(Notice::kind).contains(Kind.ELSEWHERE);
            assertThat(second.lookedAtOnly()).isTrue();
            second.resolve(null, List.of("ration"), "not to be kept");
            assertThat(second.history().noteOn(List.of("units"))).isPresent();
        }
        assertThat(file()).hasBinaryContent(bytes);
        try (LearnerFile third = open()) {
            assertThat(third.trouble()).isEmpty();
        }
    }

    @Test
    void whereNothingCanBeWrittenItSaysSoAndGoesOn() throws IOException {
        Path taken = Files.writeString(folder.resolve("a-file"), "");
        try (LearnerFile file = LearnerFile.open(taken.resolve("below.jsonl"), Script.means())) {
            some(file);
            assertThat(file.trouble()).map(Notice::kind).contains(Kind.NOT_KEPT);
            assertThat(file.history().noteOn(List.of("ration"))).contains("If «x», I salt");
        }
    }

    @Test
    void onAFullDiskNothingIsClaimedAndWhatWaitedIsWrittenOnceThereIsRoom() throws IOException {
        SmallDisk disk = new SmallDisk(200);
        try (LearnerFile file = LearnerFile.open(file(), Script.means(disk))) {
            file.name("Ana");
            assertThat(file.trouble()).isEmpty();
            file.resolve(null, List.of("ration"), "much ".repeat(40));
            assertThat(file.trouble()).map(Notice::kind).contains(Kind.NOT_KEPT);
            file.resolve(null, List.of("ration"), "more");
            assertThat(file.trouble()).isPresent();
            disk.grow(10_000);
            file.answer("01-l", List.of("units"), 2, 0, 1, 0, null);
            assertThat(file.trouble()).isEmpty();
        }
        assertThat(Files.readAllLines(file()))
                .hasSize(4)
                .allSatisfy(l -> assertThat(EntryText.read(l).sort()).isEqualTo(EntryText.Sort.KNOWN));
    }

    @Test
    void aDiskThatStaysFullKeepsTheBeginningWhole() throws IOException {
        SmallDisk disk = new SmallDisk(300);
        try (LearnerFile file = LearnerFile.open(file(), Script.means(disk))) {
            some(file);
            assertThat(file.trouble()).isPresent();
        }
        try (LearnerFile file = open()) {
            assertThat(file.history().learner()).isNotNull();
            assertThat(file.name()).isEqualTo("Ana");
        }
    }
}
