package startwater.content;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import startwater.bench.Given;
import startwater.bench.Input;
import startwater.bench.Measure;
import startwater.bench.RefusedInputException;

/** Whether a sum gets what it needs and gives what is asked for: R34. */
final class SumRules {
    private final Faults faults;

    SumRules(Faults faults) {
        this.faults = faults;
    }

    /** Checks a sum and its inputs; each asker names one of its results under {@code find}. */
    void check(Fields f, List<Fields> askers) {
        Reckoning.byId(f.text("sum")).ifPresent(kind -> {
            int before = faults.count();
            inputs(kind, f);
            boolean sound = f.sound("inputs") && faults.count() == before;
            Fields inputs = f.group("inputs");
            if (sound && inputs.keys().stream().allMatch(inputs::sound)) {
                work(kind, f, askers);
            }
        });
    }

    private void work(Reckoning kind, Fields f, List<Fields> askers) {
        List<Measure> worked;
        try {
            worked = kind.work(NamedNumber.given(f));
        } catch (RefusedInputException refused) {
            faults.add(f.line("inputs"), Complaint.SUM_REFUSED, "sum", kind.id(), "key", refused.input());
            return;
        }
        List<String> results = NamedNumber.resultNames(worked);
        for (Fields asker : askers) {
            String find = asker.text("find");
            if (asker.sound("find") && !results.contains(find)) {
                faults.add(
                        asker.line("find"),
                        Complaint.SUM_RESULT_UNKNOWN,
                        "sum",
                        kind.id(),
                        "value",
                        find,
                        "known",
                        Shown.list(results));
            }
        }
    }

    private void inputs(Reckoning kind, Fields f) {
        if (!f.sound("inputs")) {
            return;
        }
        Fields inputs = f.group("inputs");
        for (Input input : kind.inputs()) {
            if (inputs.has(input.name())) {
                range(input, inputs.number(input.name()), inputs.line(input.name()));
            } else if (input.required()) {
                faults.add(f.line("inputs"), Complaint.SUM_INPUT_MISSING, "sum", kind.id(), "key", input.name());
            }
        }
        species(kind, f);
        known(kind, inputs);
    }

    private void species(Reckoning kind, Fields f) {
        if (kind.asksSpecies() != f.has("species")) {
            Complaint complaint = kind.asksSpecies() ? Complaint.SUM_INPUT_MISSING : Complaint.SUM_NEEDS_NO_SPECIES;
            Object[] values = kind.asksSpecies()
                    ? new Object[] {"sum", kind.id(), "key", "species"}
                    : new Object[] {"sum", kind.id()};
            faults.add(f.line("species"), complaint, values);
        }
    }

    /** Checks the sliders and fixed inputs of a figure. */
    void figure(Fields f) {
        int before = faults.count();
        Fields sliders = f.group("sliders");
        Fields fixed = f.group("fixed");
        for (String name : sliders.keys()) {
            Fields s = sliders.group(name);
            double low = s.number("low");
            double high = s.number("high");
            double at = s.number("at");
            if (low >= high || at < low || at > high) {
                faults.add(sliders.line(name), Complaint.SLIDER_BACKWARDS, "key", name);
            }
            if (fixed.has(name)) {
                faults.add(fixed.line(name), Complaint.SLIDER_AND_FIXED, "key", name);
            }
        }
        if (!f.sound("kind")) {
            return;
        }
        Reckoning kind = FigureKind.byId(f.text("kind")).sum();
        for (Input input : kind.inputs()) {
            String name = input.name();
            if (input.required() && !sliders.has(name) && !fixed.has(name)) {
                faults.add(f.line("sliders"), Complaint.SUM_INPUT_MISSING, "sum", kind.id(), "key", name);
            }
            Fields slider = sliders.group(name);
            range(input, slider.number("low"), slider.line("low"));
            range(input, slider.number("high"), slider.line("high"));
            range(input, fixed.number(name), fixed.line(name));
        }
        species(kind, f);
        known(kind, sliders);
        known(kind, fixed);
        if (faults.count() == before) {
            drawn(kind, f, sliders, fixed);
        }
    }

    /** Whether the figure can be drawn with every slider where it stands at first. */
    private void drawn(Reckoning kind, Fields f, Fields sliders, Fields fixed) {
        Map<String, Double> at = new HashMap<>();
        fixed.keys().forEach(name -> at.put(name, fixed.number(name)));
        sliders.keys().forEach(name -> at.put(name, sliders.group(name).number("at")));
        if (at.values().stream().anyMatch(value -> value.isNaN())) {
            return;
        }
        try {
            kind.work(new Given(at, f.text("species")));
        } catch (RefusedInputException refused) {
            faults.add(f.line("sliders"), Complaint.SUM_REFUSED, "sum", kind.id(), "key", refused.input());
        }
    }

    private void known(Reckoning kind, Fields inputs) {
        List<String> names = kind.inputs().stream().map(Input::name).toList();
        for (String name : inputs.keys()) {
            if (!names.contains(name)) {
                faults.add(
                        inputs.line(name),
                        Complaint.SUM_INPUT_UNKNOWN,
                        "sum",
                        kind.id(),
                        "key",
                        name,
                        "known",
                        Shown.list(names));
            }
        }
    }

    private void range(Input input, double value, int line) {
        try {
            if (!Double.isNaN(value)) {
                input.check(value);
            }
        } catch (RefusedInputException refused) {
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
}
