package startwater.cli;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import startwater.bench.Given;
import startwater.bench.Input;
import startwater.bench.Measure;
import startwater.bench.RefusedInputException;
import startwater.bench.RefusedInputException.Reason;
import startwater.bench.Sum;
import startwater.bench.SumKind;
import startwater.bench.SumText;
import startwater.bench.UnitSystem;
import startwater.bench.Words;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The command of one sum: reads its options, works it, prints it. */
final class OneSum implements Callable<Integer> {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final SumKind kind;
    private @Nullable CommandSpec spec;

    OneSum(SumKind kind) {
        this.kind = kind;
    }

    void attach(CommandSpec own, Words words) {
        spec = own;
        SumHelp.describe(own, kind, words, false);
    }

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        PrintWriter out = own.commandLine().getOut();
        @Nullable Words words = SumCommand.wordsAskedFor(own);
        if (words == null) {
            return CommandLine.ExitCode.USAGE;
        }
        if (has(SumCommand.HELP)) {
            CommandSpec shown = CommandSpec.create().name(own.qualifiedName());
            SumHelp.describe(shown, kind, words, true);
            new CommandLine(shown).usage(out);
            return CommandLine.ExitCode.OK;
        }
        UnitSystem system = UnitSystem.METRIC;
        try {
            system = system();
            Sum sum = kind.work(given(system));
            SumText text = new SumText(words, system);
            if (has(SumHelp.JSON)) {
                out.println(JSON.writeValueAsString(json(sum, text, system)));
            } else {
                print(sum, text, words, out);
            }
            return CommandLine.ExitCode.OK;
        } catch (RefusedInputException refused) {
            own.commandLine().getErr().println("--" + refused.input() + ": " + refused.say(words, system));
            return CommandLine.ExitCode.USAGE;
        }
    }

    private boolean has(String flag) {
        return Boolean.TRUE.equals(parsed(flag, false));
    }

    private <T> @Nullable T parsed(String option, @Nullable T instead) {
        return Objects.requireNonNull(spec).commandLine().getParseResult().matchedOptionValue(option, instead);
    }

    private UnitSystem system() {
        String typed = Objects.requireNonNullElse(this.<String>parsed(SumHelp.UNITS, null), "metric");
        return switch (typed) {
            case "metric" -> UnitSystem.METRIC;
            case "us" -> UnitSystem.US;
            default -> throw new RefusedInputException("units", Reason.UNKNOWN_CHOICE, typed, List.of("metric", "us"));
        };
    }

    private Given given(UnitSystem system) {
        Map<String, Double> numbers = new HashMap<>();
        for (Input input : kind.inputs()) {
            @Nullable String typed = this.<String>parsed("--" + input.name(), null);
            if (typed != null) {
                numbers.put(input.name(), input.check(input.unit().from(system, number(input, typed))));
            }
        }
        if (!kind.asksSpecies()) {
            return Given.of(numbers);
        }
        @Nullable String species = this.<String>parsed(SumHelp.SPECIES, null);
        if (species == null) {
            throw new RefusedInputException("species", Reason.MISSING);
        }
        return new Given(numbers, species);
    }

    private static double number(Input input, String typed) {
        // Java's own parser would take "NaN", "0x1p3" and "10d"; a decimal comma could mean thousands, so it is
        // refused.
        if (!NUMBER.matcher(typed.strip()).matches()) {
            throw new RefusedInputException(input.name(), Reason.NOT_A_NUMBER, typed, List.of());
        }
        return Double.parseDouble(typed.strip());
    }

    private void print(Sum sum, SumText text, Words words, PrintWriter out) {
        out.println(text.title(kind));
        text.answers(sum).forEach(answer -> out.println("  " + answer));
        out.println(words.text("text.working") + text.working(sum));
        out.println(words.text("text.source") + text.source(kind));
        text.notes(sum).forEach(note -> out.println(words.text("text.note") + note));
    }

    private ObjectNode json(Sum sum, SumText text, UnitSystem system) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        Measure answer = sum.answer().in(system);
        node.put("sum", kind.id());
        node.put("value", answer.value());
        node.put("unit", answer.unit().symbol());
        for (Measure value : sum.values()) {
            Measure shown = value.in(system);
            node.put(shown.name(), shown.value());
        }
        ObjectNode units = node.putObject("units");
        sum.values().stream()
                .map(value -> value.in(system))
                .forEach(shown -> units.put(shown.name(), shown.unit().symbol()));
        ObjectNode inputs = node.putObject("inputs");
        sum.inputs().stream().map(value -> value.in(system)).forEach(shown -> inputs.put(shown.name(), shown.value()));
        if (kind.asksSpecies()) {
            inputs.put("species", this.<String>parsed(SumHelp.SPECIES, ""));
        }
        node.put("unit_system", system.name().toLowerCase(Locale.ROOT));
        node.put("working", text.working(sum));
        node.put("source", text.source(kind));
        text.notes(sum).forEach(node.putArray("notes")::add);
        return node;
    }
}
