package startwater.cli;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import startwater.bench.Input;
import startwater.bench.Measure;
import startwater.bench.SumKind;
import startwater.bench.Unit;
import startwater.bench.UnitSystem;
import startwater.bench.Words;
import startwater.fish.Species;

/** Options and help of the sums, in the reader's language. */
final class SumHelp {
    static final String UNITS = "--units";
    static final String JSON = "--json";
    static final String SPECIES = "--species";

    private SumHelp() {}

    /**
     * Gives a command the options of a sum.
     *
     * @param forHelp whether options that must be given are marked so; for parsing they are not, as the sum itself says
     *     what is missing
     */
    static void describe(CommandSpec spec, SumKind kind, Words words, boolean forHelp) {
        spec.usageMessage().description(escape(words.text("sum." + kind.id() + ".title")));
        spec.usageMessage().footer(escape(words.text("help.source") + words.text("sum." + kind.id() + ".source")));
        headings(spec, words);
        for (Input input : kind.inputs()) {
            spec.addOption(text("--" + input.name(), label(input), about(input, words))
                    .required(forHelp && input.required())
                    .build());
        }
        if (kind.asksSpecies()) {
            String about = words.text("input.species", Map.of("allowed", String.join(", ", Species.ids())));
            spec.addOption(text(SPECIES, "<id>", about).required(forHelp).build());
        }
        spec.addOption(text(UNITS, "metric|us", words.text("help.units")).build());
        spec.addOption(flag(JSON, words.text("help.json")).build());
        spec.addOption(lang(words));
        spec.addOption(help(words));
    }

    static OptionSpec lang(Words words) {
        return text(Language.OPTION, "en|es", words.text("help.lang")).build();
    }

    static OptionSpec help(Words words) {
        return flag(SumCommand.HELP, words.text("help.help")).build();
    }

    static void headings(CommandSpec spec, Words words) {
        spec.usageMessage()
                .synopsisHeading(words.text("help.usage"))
                .optionListHeading(words.text("help.options"))
                .commandListHeading(words.text("help.commands"))
                .sortOptions(false)
                .sortSynopsis(false)
                .autoWidth(false)
                .width(100);
    }

    /** Help texts are format strings to picocli. */
    static String escape(String text) {
        return text.replace("%", "%%");
    }

    private static String label(Input input) {
        Unit us = input.unit().in(UnitSystem.US);
        String symbol = input.unit().symbol();
        if (us != input.unit()) {
            // The help breaks lines at a degree sign.
            return (symbol + "|" + us.symbol()).replace("°", "");
        }
        return symbol.isEmpty() ? "<n>" : symbol;
    }

    private static String about(Input input, Words words) {
        String about = words.text("input." + input.label()) + ".";
        if (input.required()) {
            return about;
        }
        if (input.preset().isEmpty()) {
            return about + " " + words.text("help.may-be-left-out");
        }
        Measure preset = new Measure(input.name(), input.preset().getAsDouble(), input.unit());
        return about + " " + words.text("help.left-out", Map.of("value", words.amount(preset)));
    }

    private static OptionSpec.Builder text(String name, String label, String about) {
        return OptionSpec.builder(name).type(String.class).paramLabel(label).description(escape(about));
    }

    private static OptionSpec.Builder flag(String name, String about) {
        List<String> names = name.equals(SumCommand.HELP) ? List.of(name, "-h") : List.of(name);
        return OptionSpec.builder(names.get(0), names.subList(1, names.size()).toArray(new String[0]))
                .type(boolean.class)
                .description(escape(about));
    }
}
