package startwater.score;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import startwater.drill.Decision;
import startwater.fish.Stressor;

/** Verdicts put together by hand, so that what is made of one can be seen apart from how it comes about. */
final class Verdicts {
    static final double STOCK = 100;
    static final double DAYS = 7;
    static final Verdict.Information NO_TEST = new Verdict.Information(0, 0.02, 0, List.of());

    private Verdicts() {}

    /** An option with these deaths, fish, all by one cause, and no other loss. */
    static Verdict.Option dying(Decision d, double deaths, Stressor cause) {
        List<Double> byCause = zeros(Stressor.COUNT);
        byCause.set(cause.ordinal(), deaths);
        List<Double> parts = zeros(Component.values().length);
        parts.set(Component.DEATHS.ordinal(), 100 * deaths / STOCK);
        return option(d, deaths, 0, byCause, parts);
    }

    /** An option in which nothing dies and one part of the loss counts, % of the stock. */
    static Verdict.Option costing(Decision d, Component part, double loss) {
        List<Double> parts = zeros(Component.values().length);
        parts.set(part.ordinal(), loss);
        return option(d, 0, 0, zeros(Stressor.COUNT), parts);
    }

    static Verdict.Option option(
            Decision d, double deaths, double beside, List<Double> byCause, List<Double> parts) {
        double loss = parts.stream().mapToDouble(p -> p).sum();
        return new Verdict.Option(d, deaths, deaths, deaths, beside, byCause, parts, loss, false, false);
    }

    static List<Double> zeros(int count) {
        return Arrays.asList(Collections.nCopies(count, 0.0).toArray(new Double[0]));
    }

    /** A credited verdict on these options, best first, that counts. */
    static Verdict on(List<Verdict.Option> options, int own, double mark, Verdict.Word word) {
        return new Verdict(
                options,
                own,
                options.get(own).loss() - options.get(0).loss(),
                0.01,
                mark,
                word,
                true,
                false,
                STOCK,
                DAYS,
                path(Verdict.Variable.TOXIC_AMMONIA),
                List.of(),
                null,
                0,
                true,
                NO_TEST,
                List.of());
    }

    static Verdict.Path path(Verdict.Variable variable) {
        return new Verdict.Path(variable, List.of(), List.of(), List.of(), 1, 12, Double.NaN);
    }

    /** Two options of which the worse was chosen, or the better. */
    static Verdict marked(double mark, Verdict.Word word) {
        return on(
                List.of(
                        costing(Decision.LEAVE_ALONE.withFeed(0), Component.GROWTH, 1),
                        costing(Decision.LEAVE_ALONE, Component.WASTE, 2)),
                1,
                mark,
                word);
    }

    static Verdict with(Verdict v, boolean scored) {
        return new Verdict(
                v.options(),
                v.own(),
                v.regret(),
                v.standardError(),
                v.mark(),
                v.word(),
                scored,
                v.arguable(),
                v.stock(),
                v.days(),
                v.decisive(),
                v.ranges(),
                v.foresight(),
                v.surprise(),
                v.credited(),
                v.information(),
                v.lines());
    }

    static Verdict with(Verdict v, Verdict.Path decisive, boolean credited, Verdict.Information information) {
        return new Verdict(
                v.options(),
                v.own(),
                v.regret(),
                v.standardError(),
                v.mark(),
                v.word(),
                v.scored(),
                v.arguable(),
                v.stock(),
                v.days(),
                decisive,
                v.ranges(),
                v.foresight(),
                v.surprise(),
                credited,
                information,
                v.lines());
    }

    static Verdict saying(String... keys) {
        Verdict v = marked(50, Verdict.Word.COSTLY);
        return new Verdict(
                v.options(),
                v.own(),
                v.regret(),
                v.standardError(),
                v.mark(),
                v.word(),
                v.scored(),
                v.arguable(),
                v.stock(),
                v.days(),
                v.decisive(),
                v.ranges(),
                v.foresight(),
                v.surprise(),
                v.credited(),
                v.information(),
                IntStream.range(0, keys.length)
                        .mapToObj(i -> new Verdict.Line(keys[i], Verdict.Line.Severity.FACT, List.of(i)))
                        .toList());
    }
}
