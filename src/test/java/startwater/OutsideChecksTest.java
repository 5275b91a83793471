package startwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectPackage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TagFilter;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;

/**
 * Runs every test that compares with published values (tagged {@code outside}) and holds the list of those comparisons,
 * {@code src/docs/outside-checks.md}, to what came out. Run with {@code -Dstartwater.write.docs=true} to write it anew.
 */
class OutsideChecksTest {
    private static final Path LIST = Path.of("src/docs/outside-checks.md");
    private static final Path TABLES = Path.of("src/test/resources/reference");
    private static final String WRITE = "startwater.write.docs";
    private static final int LEAST_VALUES = 400;

    @BeforeAll
    static void compareWithEverythingPublished() {
        LauncherDiscoveryRequest request = LauncherDiscoveryRequestBuilder.request()
                .selectors(selectPackage("startwater"))
                .filters(TagFilter.includeTags("outside"))
                .build();
        SummaryGeneratingListener summary = new SummaryGeneratingListener();
        LauncherFactory.create().execute(request, summary);
        assertThat(summary.getSummary().getTestsSucceededCount()).isGreaterThan(40);
        assertThat(summary.getSummary().getFailures())
                .as("failures among the checks against published values")
                .isEmpty();
    }

    @Test
    void moreThanFourHundredPublishedValuesAreCompared() throws IOException {
        assertThat(tables().stream().mapToInt(table -> outcomes(table).size()).sum())
                .isGreaterThanOrEqualTo(LEAST_VALUES);
    }

    @Test
    void theListOfOutsideChecksIsUpToDate() throws IOException {
        String list = list();
        if (Boolean.getBoolean(WRITE)) {
            Files.createDirectories(Objects.requireNonNull(LIST.getParent()));
            Files.writeString(LIST, list, StandardCharsets.UTF_8);
        }
        assertThat(Files.readString(LIST, StandardCharsets.UTF_8))
                .as("the list in " + LIST + "; write it anew with -D" + WRITE + "=true")
                .isEqualTo(list);
    }

    private static List<ReferenceTable> tables() throws IOException {
        try (Stream<Path> files = Files.walk(TABLES)) {
            return files.filter(file -> file.toString().endsWith(".csv"))
                    .map(file -> TABLES.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .map(ReferenceTable::read)
                    .toList();
        }
    }

    private static Map<String, OutsideChecks.Outcome> outcomes(ReferenceTable table) {
        return OutsideChecks.all().getOrDefault(table.name(), Map.of());
    }

    private static String list() throws IOException {
        StringBuilder text = new StringBuilder();
        int values = 0;
        for (ReferenceTable table : tables()) {
            values += outcomes(table).size();
            text.append(line(table));
        }
        return """
                # Checks against published values

                Written by `OutsideChecksTest` from a run of every test tagged `outside`; do not edit by hand.
                The values and their sources, one by one, are the files under `src/test/resources/reference`.
                *Worst* is the largest distance between a computed and a published value, as a share of what the
                tolerance allows: 0 is agreement, 1 the edge. A table without a count holds data that others are fitted
                to or asserted value by value in its own test.

                Values compared: %d

                | table | source | tolerance | values | worst | at |
                |---|---|---|---:|---:|---|
                """.formatted(values) + text;
    }

    private static String line(ReferenceTable table) {
        Map<String, OutsideChecks.Outcome> outcomes = outcomes(table);
        String count = outcomes.isEmpty() ? "" : String.valueOf(outcomes.size());
        return "| " + String.join(" | ", table.name(), table.source(), table.toleranceText(), count, worst(outcomes))
                + " |\n";
    }

    private static String worst(Map<String, OutsideChecks.Outcome> outcomes) {
        return outcomes.entrySet().stream()
                .max(Comparator.comparing((Map.Entry<String, OutsideChecks.Outcome> e) -> rounded(e.getValue()))
                        .thenComparing(Map.Entry::getKey))
                .map(e -> rounded(e.getValue()) + " | " + e.getKey())
                .orElse(" | ");
    }

    private static String rounded(OutsideChecks.Outcome outcome) {
        return String.format(Locale.ROOT, "%.2f", outcome.shareOfAllowed());
    }
}
