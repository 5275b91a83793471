package startwater.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts a sum into words: answers with units, the working in one line, the source, what to bear in mind. */
public final class SumText {
    private static final double OUNCES_PER_POUND = 16;
    /** What was typed comes back as typed; steps carry enough figures to rework the answer to its last one. */
    private static final int TYPED_FIGURES = 12;

    private static final int STEP_FIGURES = 6;

    private final Words words;
    private final UnitSystem system;

    public SumText(Words words, UnitSystem system) {
        this.words = words;
        this.system = system;
    }

    /** What the sum is for, as a heading. */
    public String title(SumKind kind) {
        return words.text("sum." + kind.id() + ".title");
    }

    /** One line for each value: name, amount, unit. */
    public List<String> answers(Sum sum) {
        return sum.values().stream()
                .map(value -> words.text("value." + value.name()) + ": " + amount(value))
                .toList();
    }

    private String amount(Measure metric) {
        Measure shown = metric.in(system);
        String amount = words.amount(shown);
        if (shown.unit() == Unit.OUNCE && shown.value() >= OUNCES_PER_POUND) {
            double pounds = StrictMath.floor(shown.value() / OUNCES_PER_POUND);
            Measure rest = new Measure("rest", shown.value() - pounds * OUNCES_PER_POUND, Unit.OUNCE);
            return amount + " (" + words.amount(new Measure("pounds", pounds, Unit.POUND)) + " " + words.amount(rest)
                    + ")";
        }
        return amount;
    }

    /** The working in one line. US amounts show how they turn into the metric ones it is worked in. */
    public String working(Sum sum) {
        return words.text(sum.working(), filled(sum));
    }

    public String source(SumKind kind) {
        return words.text("sum." + kind.id() + ".source");
    }

    /** What to bear in mind, one sentence or two each. */
    public List<String> notes(Sum sum) {
        Map<String, String> filled = filled(sum);
        return sum.notes().stream().map(key -> words.text(key, filled)).toList();
    }

    private Map<String, String> filled(Sum sum) {
        Map<String, String> filled = new LinkedHashMap<>();
        sum.inputs().forEach(input -> filled.put(input.name(), typed(input)));
        sum.values().forEach(value -> filled.put("out." + value.name(), worked(value)));
        sum.steps().forEach(step -> filled.put("step." + step.name(), step(step)));
        return filled;
    }

    private String typed(Measure metric) {
        Measure shown = metric.in(system);
        if (shown.unit() == metric.unit()) {
            return words.amount(metric, TYPED_FIGURES);
        }
        return "(" + words.amount(shown, STEP_FIGURES) + " = " + words.amount(metric, STEP_FIGURES) + ")";
    }

    private String step(Measure step) {
        String amount = words.amount(step, STEP_FIGURES);
        return step.value() < 0 ? "(" + amount + ")" : amount;
    }

    private String worked(Measure metric) {
        Measure shown = metric.in(system);
        return shown.unit() == metric.unit()
                ? words.amount(metric)
                : words.amount(metric) + " = " + words.amount(shown);
    }
}
