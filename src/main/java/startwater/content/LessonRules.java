package startwater.content;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The rules of the live blocks of one lesson: R15, R16 and R33 to R36. */
final class LessonRules {
    /** Fewest words of an explanation: right or wrong alone teaches nothing. */
    static final int FEWEST_REASON_WORDS = 15;

    private final PlainWords plain;
    private final @Nullable Set<String> drills;
    private final Map<Sum, Integer> blankBefore = new EnumMap<>(Sum.class);
    private Faults faults;

    /** @param drills ids of the drills there are; null when that is not known */
    LessonRules(String language, @Nullable Set<String> drills, Faults faults) {
        this.plain = PlainWords.forLessons(language);
        this.drills = drills;
        this.faults = faults;
    }

    /** Lines count within this part of the file from now on. */
    void in(Faults part) {
        this.faults = part;
    }

    /** Notes what is hard in a text of prose. */
    void prose(String text, int line) {
        plain.check(text, "prose", line, faults);
    }

    void figure(Fields f) {
        easy(f, "caption");
        Fields sliders = f.group("sliders");
        Fields fixed = f.group("fixed");
        for (String name : sliders.keys()) {
            Fields s = sliders.group(name);
            if (s.number("low") >= s.number("high")
                    || s.number("at") < s.number("low")
                    || s.number("at") > s.number("high")) {
                faults.add(sliders.line(name), Complaint.SLIDER_BACKWARDS, "key", name);
            }
            if (fixed.has(name)) {
                faults.add(fixed.line(name), Complaint.SLIDER_AND_FIXED, "key", name);
            }
        }
        if (f.sound("kind")) {
            Sum sum = FigureKind.byId(f.text("kind")).sum();
            for (Sum.Quantity input : sum.inputs()) {
                String name = input.name();
                if (!sliders.has(name) && !fixed.has(name)) {
                    faults.add(f.line("sliders"), Complaint.SUM_INPUT_MISSING, "sum", sum.id(), "key", name);
                }
                Fields slider = sliders.group(name);
                range(input, slider.number("low"), slider.line("low"));
                range(input, slider.number("high"), slider.line("high"));
                range(input, fixed.number(name), fixed.line(name));
            }
            known(sum, sliders);
            known(sum, fixed);
        }
    }

    void worked(Fields f) {
        easy(f, "ask");
        f.groups("steps").forEach(step -> easy(step, "say"));
        Optional<Sum> sum = Sum.byId(f.text("sum"));
        if (sum.isPresent()) {
            inputs(sum.get(), f);
            f.groups("steps").forEach(step -> result(sum.get(), step, "find"));
            fade(sum.get(), f);
        }
    }

    private void fade(Sum sum, Fields f) {
        if (!f.sound("blank")) {
            return;
        }
        int blank = f.whole("blank");
        int steps = f.items("steps").size();
        Integer before = blankBefore.put(sum, blank);
        if (f.sound("steps") && blank > steps) {
            faults.add(f.line("blank"), Complaint.FADE_TOO_MANY, "blank", blank, "steps", steps);
        } else if (before == null && blank != 0) {
            faults.add(f.line("blank"), Complaint.FADE_FIRST);
        } else if (before != null && blank < before) {
            faults.add(f.line("blank"), Complaint.FADE_BACK, "blank", blank, "before", before);
        }
    }

    void question(Fields f) {
        easy(f, "ask");
        easy(f, "because");
        thin(f, "because");
        List<Fields> options = f.groups("options");
        for (Fields option : options) {
            easy(option, "reason");
            thin(option, "reason");
        }
        long right = options.stream().filter(option -> option.flag("right")).count();
        if (!options.isEmpty() && right != 1 && options.stream().allMatch(option -> option.sound("right"))) {
            faults.add(f.line("options"), Complaint.NOT_ONE_RIGHT, "count", right);
        }
        Sum.byId(f.text("sum")).ifPresent(sum -> {
            inputs(sum, f);
            result(sum, f, "find");
        });
    }

    void drill(Fields f) {
        easy(f, "say");
        String id = f.text("id");
        if (drills == null || !f.sound("id") || drills.contains(id)) {
            return;
        }
        Optional<String> near = Near.to(id, drills);
        if (near.isPresent()) {
            faults.add(f.line("id"), Complaint.DEAD_DRILL_NEAR, "id", id, "near", near.get());
        } else {
            faults.add(f.line("id"), Complaint.DEAD_DRILL, "id", id);
        }
    }

    void caution(Fields f) {
        easy(f, "say");
    }

    /** Checks a block that names a sum, its inputs and a result, such as a named number of the front block. */
    void namedNumber(Fields f) {
        Sum.byId(f.text("sum")).ifPresent(sum -> {
            inputs(sum, f);
            result(sum, f, "find");
        });
    }

    private void inputs(Sum sum, Fields f) {
        Fields inputs = f.group("inputs");
        if (!f.sound("inputs")) {
            return;
        }
        for (Sum.Quantity input : sum.inputs()) {
            if (!inputs.has(input.name())) {
                faults.add(f.line("inputs"), Complaint.SUM_INPUT_MISSING, "sum", sum.id(), "key", input.name());
            }
            range(input, inputs.number(input.name()), inputs.line(input.name()));
        }
        known(sum, inputs);
    }

    private void known(Sum sum, Fields inputs) {
        for (String name : inputs.keys()) {
            if (sum.input(name).isEmpty()) {
                faults.add(
                        inputs.line(name),
                        Complaint.SUM_INPUT_UNKNOWN,
                        "sum",
                        sum.id(),
                        "key",
                        name,
                        "known",
                        Sum.names(sum.inputs()));
            }
        }
    }

    private void range(Sum.Quantity input, double value, int line) {
        if (value < input.low() || value > input.high()) {
            faults.add(
                    line,
                    Complaint.SUM_INPUT_RANGE,
                    "key",
                    input.name(),
                    "value",
                    value,
                    "low",
                    input.low(),
                    "high",
                    input.high());
        }
    }

    private void result(Sum sum, Fields f, String key) {
        String name = f.text(key);
        if (f.sound(key) && sum.result(name).isEmpty()) {
            faults.add(
                    f.line(key),
                    Complaint.SUM_RESULT_UNKNOWN,
                    "sum",
                    sum.id(),
                    "value",
                    name,
                    "known",
                    Sum.names(sum.results()));
        }
    }

    private void easy(Fields f, String key) {
        plain.check(f.text(key), key, f.line(key), faults);
    }

    private void thin(Fields f, String key) {
        int count = Readability.words(f.text(key)).size();
        if (f.sound(key) && count < FEWEST_REASON_WORDS) {
            faults.add(f.line(key), Complaint.THIN_REASON, "count", count, "least", FEWEST_REASON_WORDS);
        }
    }
}
