package startwater.content;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import startwater.strip.Pad;

/** Makes blocks of fields that broke no rule. */
final class BlockBinder {
    private static final double USUAL_TOLERANCE_PERCENT = 5;

    private BlockBinder() {}

    static Block figure(Fields f) {
        Map<String, Block.Slider> sliders = new LinkedHashMap<>();
        Fields all = f.group("sliders");
        for (String name : all.keys()) {
            Fields s = all.group(name);
            sliders.put(name, new Block.Slider(s.number("low"), s.number("high"), s.number("step"), s.number("at")));
        }
        return new Block.Figure(
                FigureKind.byId(f.text("kind")),
                sliders,
                numbers(f.group("fixed")),
                f.text("species"),
                f.text("caption"));
    }

    static Block worked(Fields f) {
        List<Block.Step> steps = f.groups("steps").stream()
                .map(step -> new Block.Step(step.text("say"), step.text("find")))
                .toList();
        return new Block.Worked(
                sum(f),
                NamedNumber.given(f),
                f.text("ask"),
                steps,
                f.whole("blank"),
                f.number("tolerancePercent", USUAL_TOLERANCE_PERCENT));
    }

    static Block question(Fields f) {
        String kind = f.text(KindShape.KEY);
        if (kind.equals("choice")) {
            List<Block.Option> options = f.groups("options").stream()
                    .map(option -> new Block.Option(option.text("says"), option.flag("right"), option.text("reason")))
                    .toList();
            return new Block.Choice(f.text("ask"), options);
        }
        boolean estimate = kind.equals("estimate");
        return new Block.NumberQuestion(
                estimate,
                f.text("ask"),
                sum(f),
                NamedNumber.given(f),
                f.text("find"),
                f.number(estimate ? "factor" : "tolerancePercent"),
                f.text("because"));
    }

    static Block strip(Fields f) {
        Map<Pad, Double> water = new EnumMap<>(Pad.class);
        Fields pads = f.group("water");
        pads.keys().forEach(name -> water.put(PadNames.pad(name), pads.number(name)));
        return new Block.StripReading(
                f.text("ask"), water, (int) f.number("dilution", 1), (long) f.number("seed", 1), f.text("because"));
    }

    static Block predict(Fields f) {
        return new Block.Predict(
                f.text("ask"),
                PadNames.pad(f.text("pad")),
                sum(f),
                NamedNumber.given(f),
                f.text("find"),
                f.text("because"));
    }

    static Block drill(Fields f) {
        return new Block.DrillLink(f.text("id"), f.text("say"));
    }

    static Block caution(Fields f) {
        return new Block.Caution(f.text("say"));
    }

    private static Reckoning sum(Fields f) {
        return Reckoning.byId(f.text("sum")).orElseThrow();
    }

    private static Map<String, Double> numbers(Fields f) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        f.keys().forEach(key -> numbers.put(key, f.number(key)));
        return numbers;
    }
}
