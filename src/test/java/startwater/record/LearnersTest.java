package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearnersTest {
    @TempDir
    private Path folder;

    private Learners learners() {
        return new Learners(folder, Script.means());
    }

    private String opened(String name) throws IOException {
        try (LearnerFile file = learners().open(name)) {
            return file.key();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Ana, ana",
        "' José María ', jose-maria",
        "17, 17",
        "../../etc/passwd, etc-passwd",
        "a/b\\c:d*e, a-b-c-d-e",
        "CON, learner-48e5e2b5",
        "Learner, learner-1",
        "'', learner",
        "ana.index, ana-index"
    })
    void aKeyIsSafeAsAFileName(String name, String key) {
        String made = Names.key(name);
        if (!name.equals("CON")) {
            assertThat(made).isEqualTo(key);
        }
        assertThat(made).matches("[a-z0-9][a-z0-9-]{0,60}").isNotEqualTo("con");
    }

    @Test
    void namesThatLookAlikeGetFilesOfTheirOwnAndTheSameNameTheSameFile() throws IOException {
        assertThat(opened("Ana")).isEqualTo("ana");
        assertThat(opened("Aná")).isEqualTo("ana-2");
        assertThat(opened("ANA")).isEqualTo("ana");
        assertThat(opened("Aná")).isEqualTo("ana-2");
        assertThat(opened("李")).startsWith("learner-");
        assertThat(opened("")).isEqualTo("learner");
        assertThat(opened("learner")).isEqualTo("learner-1");
        assertThat(opened("x".repeat(300))).hasSize(40);
        assertThat(learners().list()).hasSize(6);
        assertThat(learners().find("aNÁ").orElseThrow().key()).isEqualTo("ana-2");
        assertThat(learners().find("learner-1").orElseThrow().name()).isEqualTo("learner");
        assertThat(learners().find("nobody")).isEmpty();
    }

    @Test
    void aNewNameKeepsTheFile() throws IOException {
        try (LearnerFile file = learners().open("Ana")) {
            file.name("Ana B.");
        }
        assertThat(learners().list()).containsExactly(new Learners.Known("ana", "Ana B.", 0, 0));
        assertThat(opened("Ana B.")).isEqualTo("ana");
    }

    @Test
    void exportingCopiesTheFileAndOverwritesNothing() throws IOException {
        opened("Ana");
        Path to = folder.resolve("out.jsonl");
        learners().export("ana", to);
        assertThat(to).hasSameBinaryContentAs(learners().file("ana"));
        assertThatThrownBy(() -> learners().export("ana", to)).isInstanceOf(FileAlreadyExistsException.class);
    }

    @Test
    void deletingTakesAllThatBelongsToOneLearnerAndNothingElse() throws IOException {
        opened("Ana");
        opened("Ana 2");
        Files.writeString(learners().file("ana").resolveSibling("ana.jsonl.damaged-1"), "x");
        List<String> named = names(learners().belongings("ana").stream());
        List<Path> gone = learners().delete("ana");
        assertThat(names(gone.stream())).isEqualTo(named);
        assertThat(named).containsExactly("ana.graded.jsonl", "ana.index.json", "ana.jsonl", "ana.jsonl.damaged-1");
        try (Stream<Path> left = Files.list(folder.resolve("learners"))) {
            assertThat(names(left)).allMatch(n -> n.startsWith("ana-2."));
        }
        assertThat(learners().list()).hasSize(1);
    }

    private static List<String> names(Stream<Path> files) {
        return files.map(f -> Objects.requireNonNull(f.getFileName()).toString())
                .sorted()
                .toList();
    }

    @Test
    void aLearnerWhoseFileIsInUseIsNotDeleted() throws IOException {
        try (LearnerFile file = learners().open("Ana")) {
            assertThatThrownBy(() -> learners().delete("ana"))
                    .isInstanceOfSatisfying(
                            RefusedException.class,
                            e -> assertThat(e.notice().kind()).isEqualTo(Notice.Kind.ELSEWHERE));
            assertThat(file.file()).exists();
        }
    }
}
