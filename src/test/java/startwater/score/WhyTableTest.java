package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every sentence of the explanation has a case where it must appear and one where it must not. */
@Tag("slow")
class WhyTableTest {
    /** Key, the case where it must appear, the case where it must not. */
    private static final String TABLE = """
            credit.none            | impossible              | toxic
            said.nothing           | nothing read            | calm
            said.silent            | nothing read            | calm
            said.fishless.waiting  | fishless, waiting       | fishless, half-way
            said.fishless.halfway  | fishless, half-way      | fishless, waiting
            said.fishless.both     | fishless, both under one | fishless, waiting
            said.fishless.over     | fishless, overdosed     | fishless, waiting
            said.proof             | fishless, proved        | fishless, both under one
            said.nursery           | nursery, dying          | fishless, waiting
            said.ammonia.harms     | toxic                   | calm
            said.ammonia.under     | calm                    | toxic
            said.nitrite.unread    | nitrite uncovered       | nitrite covered
            said.nitrite.short     | nitrite short           | nitrite covered
            said.nitrite.covered   | nitrite covered         | nitrite short
            said.air.off           | air off                 | low oxygen
            said.oxygen.low        | low oxygen              | calm
            said.alkalinity.low    | sour                    | calm
            said.alkalinity.days   | away                    | sour
            does.safe              | nitrite covered         | toxic
            does.already           | toxic                   | cold
            does.later             | away                    | toxic
            does.mayFail           | old blower              | calm
            costs.best             | nitrite covered         | toxic
            costs.best.deaths      | best of a bad day       | toxic
            costs.deaths           | toxic                   | nitrite covered
            costs.cause            | toxic                   | very toxic and sour
            costs.where            | nursery, too early      | nursery, dying
            costs.nursery          | nursery, dying          | nursery, too early
            costs.part             | toxic                   | nitrite covered
            test.again             | away                    | toxic
            test.skipped           | away, nothing read      | toxic
            rule.1                 | calm                    | toxic
            rule.2                 | nitrite uncovered       | calm
            rule.3                 | rather toxic            | calm
            rule.4                 | toxic                   | calm
            rule.5                 | nitrite short           | calm
            rule.6                 | much nitrite            | calm
            rule.7                 | sour                    | calm
            rule.8                 | air off                 | calm
            rule.9                 | toxic                   | calm
            rule.10                | cold                    | calm
            rule.11                | away                    | calm
            rule.12                | nothing read            | calm
            rule.13                | scrubbed                | calm
            rule.14                | fishless, waiting       | calm
            rule.15                | dead fish               | calm
            """;

    private static List<String[]> rows() {
        return TABLE.lines().map(l -> l.strip().split("\\s*\\|\\s*")).toList();
    }

    private static Set<String> templates(String... prefixes) {
        Set<String> keys = new TreeSet<>();
        for (String key :
                ResourceBundle.getBundle("startwater.score.Why", Locale.ROOT).keySet()) {
            for (String prefix : prefixes) {
                // What the end of a drill says of a rule without a reading at hand stands in no debrief of a visit.
                if (key.startsWith(prefix) && !key.endsWith(".taught")) {
                    keys.add(key);
                }
            }
        }
        return keys;
    }

    @Test
    void everyTemplateHasItsCases() {
        Set<String> inTable = rows().stream().map(r -> r[0]).collect(Collectors.toSet());
        assertThat(inTable)
                .containsExactlyInAnyOrderElementsOf(
                        templates("credit.", "said.", "does.", "costs.", "test.", "rule."));
    }

    @Test
    void everySentenceAppearsWhereItMustAndNotWhereItMustNot() {
        Map<String, Set<String>> said = WhyCases.all().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> Judge.judge(e.getValue()).lines().stream()
                        .map(Verdict.Line::key)
                        .collect(Collectors.toSet())));
        for (String[] row : rows()) {
            assertThat(said.get(row[1])).as(row[0] + " must appear: " + row[1]).contains(row[0]);
            assertThat(said.get(row[2]))
                    .as(row[0] + " must not appear: " + row[2])
                    .doesNotContain(row[0]);
        }
    }

    @Test
    void theViewThatAcceptsAChoiceIsNamedAndNoOther() {
        Case c = WhyCases.named("toxic");
        Scored scored = Judge.score(c);
        Verdict verdict = Judge.judge(c);
        Paths paths = Paths.of(scored, scored.own(), scored.losses().best());
        assertThat(templates("view.")).hasSize(View.values().length);
        for (View view : View.values()) {
            assertThat(Explainer.lines(scored, verdict, paths, view))
                    .extracting(Verdict.Line::key)
                    .filteredOn(k -> k.startsWith("view."))
                    .containsExactly("view." + view.name().toLowerCase(Locale.ROOT));
        }
        assertThat(Explainer.lines(scored, verdict, paths, null))
                .extracting(Verdict.Line::key)
                .noneMatch(k -> k.startsWith("view."));
    }

    /** Key, the case where it must appear, the case where it must not. */
    private static final String FLIPS = """
            flip.choice  | salt forgotten | cold
            flip.reading | away           | cold
            flip.unread  | nothing read   | cold
            flip.sooner  | away a week, best done | nothing read
            flip.none    | cold           | nothing read
            """;

    @Test
    void everyFlipAppearsWhereItMustAndNotWhereItMustNot() {
        assertThat(FLIPS.lines().map(l -> l.strip().split("\\s*\\|\\s*")[0]).collect(Collectors.toSet()))
                .isEqualTo(templates("flip."));
        for (String line : FLIPS.lines().toList()) {
            String[] row = line.strip().split("\\s*\\|\\s*");
            assertThat(key(row[1])).as(row[0] + " must appear: " + row[1]).isEqualTo(row[0]);
            assertThat(key(row[2])).as(row[0] + " must not appear: " + row[2]).isNotEqualTo(row[0]);
        }
    }

    private static String key(String name) {
        return Judge.secondLook(WhyCases.named(name), Care.LIVE).changes().key();
    }

    /** Key, the case where it must appear, the case where it must not. */
    private static final String HABITS = """
            kept.best        | fishless, waiting | salt forgotten
            kept.best.deaths | best of a bad day | cold
            kept.deaths      | salt forgotten    | cold
            kept.costs       | fishless, half-way | nitrite covered
            """;

    @Test
    void everyHabitAppearsWhereItMustAndNotWhereItMustNot() {
        assertThat(HABITS.lines().map(l -> l.strip().split("\\s*\\|\\s*")[0]).collect(Collectors.toSet()))
                .isEqualTo(templates("kept."));
        for (String line : HABITS.lines().toList()) {
            String[] row = line.strip().split("\\s*\\|\\s*");
            assertThat(habit(row[1])).as(row[0] + " must appear: " + row[1]).isEqualTo(row[0]);
            assertThat(habit(row[2])).as(row[0] + " must not appear: " + row[2]).isNotEqualTo(row[0]);
        }
    }

    private static String habit(String name) {
        return Habitual.of(WhyCases.named(name), Care.LIVE).line().key();
    }

    @Test
    void aSecondLookReadsInBothLanguages() {
        for (String name : List.of(
                "salt forgotten", "away", "nothing read", "cold", "away a week, best done", "water poured away")) {
            for (Verdict.Line line :
                    Judge.secondLook(WhyCases.named(name), Care.LIVE).lines()) {
                for (String language : List.of("en", "es")) {
                    assertThat(WhyText.in(Locale.forLanguageTag(language)).format(line))
                            .as(line.key())
                            .isNotBlank()
                            .doesNotContain("{", "?", "NaN");
                }
            }
        }
    }

    @Test
    void everySentenceReadsInBothLanguages() {
        for (String name : List.of(
                "toxic",
                "away",
                "nitrite short",
                "fishless, half-way",
                "scrubbed",
                "cold",
                "fishless, proved",
                "nursery, dying",
                "nursery, too early")) {
            for (Verdict.Line line : Judge.judge(WhyCases.named(name)).lines()) {
                for (String language : List.of("en", "es")) {
                    assertThat(WhyText.in(Locale.forLanguageTag(language)).format(line))
                            .as(line.key())
                            .isNotBlank()
                            .doesNotContain("{", "?", "NaN");
                }
            }
        }
    }
}
