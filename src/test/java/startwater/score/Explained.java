package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import startwater.drill.Decision;
import startwater.score.Verdict.Line;

/** Explanations of verdicts and books that were made by hand, for the tests of their sentences. */
final class Explained {
    /** A filter that is half ripe: no ammonia to speak of, and it eats about 4 mg/L of alkalinity a day. */
    static final Setting RIPE = Setting.of(Setting.young(1, 0.5));

    static final Paths RIPE_PATHS = RIPE.paths();
    static final Decision NOTHING = Decision.LEAVE_ALONE;
    static final Decision HOLD = NOTHING.withFeed(0);
    static final Verdict FINE =
            Verdicts.on(0, Verdicts.costing(NOTHING, Component.WASTE, 0.1)).made();

    static List<Line> lines(Notebook book, Verdict verdict) {
        return Explainer.lines(RIPE.with(book), verdict, RIPE_PATHS, null);
    }

    static List<Line> lines(Setting setting, Verdict verdict) {
        return Explainer.lines(setting.scored, verdict, setting.paths(), null);
    }

    static List<String> keys(List<Line> lines, String start) {
        return lines.stream().map(Line::key).filter(k -> k.startsWith(start)).toList();
    }

    static Line line(List<Line> lines, String key) {
        return lines.stream()
                .filter(l -> l.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " is not in " + keys(lines, "")));
    }

    static void tells(Line line, Line.Severity severity, Object... parameters) {
        assertThat(line.severity()).as(line.key()).isEqualTo(severity);
        assertThat(line.parameters()).as(line.key()).hasSize(parameters.length);
        for (int i = 0; i < parameters.length; i++) {
            Object told = line.parameters().get(i);
            if (told instanceof Number number && parameters[i] instanceof Number expected) {
                assertThat(number.doubleValue())
                        .as(line.key() + " " + i)
                        .isCloseTo(expected.doubleValue(), within(1e-3 * Math.abs(expected.doubleValue())));
            } else {
                assertThat(told).as(line.key() + " " + i).isEqualTo(parameters[i]);
            }
        }
    }

    private Explained() {}
}
