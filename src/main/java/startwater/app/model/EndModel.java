package startwater.app.model;

import java.util.List;
import java.util.Objects;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillRun;
import startwater.drill.VisitRecord;
import startwater.score.RunSummary;
import startwater.score.Verdict;

/** A finished run looked back on: its decisions with their marks, and the summary once it is worked out. */
public final class EndModel {
    private final DrillRun run;
    private final List<Verdict> verdicts;
    private final ObjectProperty<@Nullable RunSummary> summary = new SimpleObjectProperty<>();

    /** One decision on the time line. */
    public record Step(VisitRecord visit, Verdict verdict) {}

    public EndModel(DrillRun run, List<Verdict> verdicts) {
        this.run = run;
        this.verdicts = List.copyOf(verdicts);
    }

    public DrillRun run() {
        return run;
    }

    public List<Verdict> verdicts() {
        return verdicts;
    }

    /** Null until it is worked out. */
    public ObjectProperty<@Nullable RunSummary> summaryProperty() {
        return summary;
    }

    /** The summary. @throws NullPointerException before it is worked out */
    public RunSummary summary() {
        return Objects.requireNonNull(summary.get());
    }

    /** The decisions with their verdicts, in order. */
    public List<Step> steps() {
        List<VisitRecord> asked = run.past().visits().stream()
                .filter(v -> v.asked() && v.decision() != null)
                .toList();
        int n = Math.min(asked.size(), verdicts.size());
        return java.util.stream.IntStream.range(0, n)
                .mapToObj(i -> new Step(asked.get(i), verdicts.get(i)))
                .toList();
    }
}
