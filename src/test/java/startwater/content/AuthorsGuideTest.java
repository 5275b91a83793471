package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import startwater.drill.Unknown;

/** The guide names everything an author may write, in the words of the program. */
class AuthorsGuideTest {
    private String guide = "";

    @BeforeEach
    void read() throws IOException {
        guide = Files.readString(Path.of("src/docs/authors.md"));
    }

    @Test
    void everyRuleIsListed() {
        for (Rule rule : Rule.values()) {
            assertThat(guide).contains("- **" + rule.name() + "** " + rule.sentence("en") + "\n");
        }
    }

    @Test
    void everyKeyIsListedWithWhatItIs() {
        for (GroupShape shape : List.of(
                ScenarioShape.FILE,
                ScenarioShape.WORDS,
                ScenarioShape.SYSTEM,
                ScenarioShape.FISH,
                ScenarioShape.SOURCE,
                ScenarioShape.START,
                ScenarioShape.BEFORE,
                ScenarioShape.KEEPER,
                ScenarioShape.AWAY,
                ScenarioShape.SHELF,
                ScenarioShape.EVENT,
                ScenarioShape.NURSERY)) {
            for (GroupShape.Field field : shape.fields()) {
                assertThat(guide).contains("- `" + field.key() + "` " + field.says());
                if (field.shape() instanceof NumberShape number) {
                    assertThat(guide)
                            .contains(field.says() + ", " + Shown.number(number.low()) + " to "
                                    + Shown.number(number.high()));
                }
            }
        }
    }

    @Test
    void everyUnknownPriorBlockAndFrontKeyIsNamed() {
        for (Unknown unknown : Unknown.values()) {
            assertThat(guide).contains("`" + unknown.key() + "`");
        }
        for (String block : BlockKind.ids()) {
            assertThat(guide).contains("- `" + block + "` ");
        }
        for (String figure : FigureKind.ids()) {
            assertThat(guide).contains("`" + figure + "`");
        }
        for (String key : LessonFront.SHAPE.keys()) {
            assertThat(guide).contains("`" + key + "`");
        }
        for (String kind : List.of("lognormal", "uniform", "normal", "known")) {
            assertThat(guide).contains("{" + kind + ": ");
        }
    }
}
