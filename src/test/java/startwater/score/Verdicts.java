package startwater.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import startwater.drill.Decision;
import startwater.fish.Stressor;

/** A verdict put together by hand, so that what is made of one can be seen apart from how it comes about. */
final class Verdicts {
    static final double STOCK = 100;
    static final double DAYS = 7;
    static final Verdict.Information NO_TEST = new Verdict.Information(0, 0.02, 0, List.of());

    private final List<Verdict.Option> options;
    private final int own;
    private double error = 0.01;
    private double mark = 50;
    private Verdict.Word word = Verdict.Word.COSTLY;
    private boolean scored = true;
    private boolean credited = true;
    private Verdict.Variable decisive = Verdict.Variable.TOXIC_AMMONIA;
    private Verdict.Information information = NO_TEST;
    private List<Verdict.Line> lines = List.of();

    private Verdicts(List<Verdict.Option> options, int own) {
        this.options = options;
        this.own = own;
    }

    /** On these options, best first. @param own place of the choice */
    static Verdicts on(int own, Verdict.Option... options) {
        return new Verdicts(List.of(options), own);
    }

    /** The worse of two options was chosen. */
    static Verdict marked(double mark, Verdict.Word word) {
        Verdicts v = on(
                1,
                costing(Decision.LEAVE_ALONE.withFeed(0), Component.GROWTH, 1),
                costing(Decision.LEAVE_ALONE, Component.WASTE, 2));
        return v.mark(mark, word).made();
    }

    Verdicts error(double percent) {
        error = percent;
        return this;
    }

    Verdicts mark(double value, Verdict.Word said) {
        mark = value;
        word = said;
        return this;
    }

    Verdicts unscored() {
        scored = false;
        return this;
    }

    Verdicts uncredited() {
        credited = false;
        return this;
    }

    Verdicts decidedBy(Verdict.Variable variable) {
        decisive = variable;
        return this;
    }

    Verdicts information(Verdict.Information worth) {
        information = worth;
        return this;
    }

    Verdicts saying(String... keys) {
        lines = IntStream.range(0, keys.length)
                .mapToObj(i -> new Verdict.Line(keys[i], Verdict.Line.Severity.FACT, List.of(i)))
                .toList();
        return this;
    }

    Verdict made() {
        return new Verdict(
                options,
                own,
                options.get(own).loss() - options.get(0).loss(),
                error,
                mark,
                word,
                scored,
                false,
                STOCK,
                DAYS,
                new Verdict.Path(decisive, List.of(), List.of(), List.of(), 1, 12, Double.NaN),
                List.of(),
                null,
                0,
                credited,
                information,
                lines);
    }

    /** An option in which nothing dies and one part of the loss counts, % of the stock. */
    static Verdict.Option costing(Decision d, Component part, double loss) {
        return option(d, Map.of(part, loss), Map.of(), 0);
    }

    /**
     * An option.
     *
     * @param parts of its loss beside deaths, % of the stock
     * @param deaths by cause, fish
     * @param beside of them in the nursery, fish
     */
    static Verdict.Option option(
            Decision d, Map<Component, Double> parts, Map<Stressor, Double> deaths, double beside) {
        List<Double> byPart = zeros(Component.values().length);
        parts.forEach((part, loss) -> byPart.set(part.ordinal(), loss));
        List<Double> byCause = zeros(Stressor.COUNT);
        deaths.forEach((cause, fish) -> byCause.set(cause.ordinal(), fish));
        double dead = deaths.values().stream().mapToDouble(f -> f).sum();
        byPart.set(Component.DEATHS.ordinal(), 100 * dead / STOCK);
        double loss = byPart.stream().mapToDouble(p -> p).sum();
        return new Verdict.Option(d, dead, dead, dead, beside, byCause, byPart, loss, false, false);
    }

    private static List<Double> zeros(int count) {
        return new ArrayList<>(Collections.nCopies(count, 0.0));
    }
}
