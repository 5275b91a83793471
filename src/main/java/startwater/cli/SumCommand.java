package startwater.cli;

import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import startwater.bench.SumKind;
import startwater.bench.Words;

/**
 * {@code sum}: works one of the sums of the bench. The commands under it are made from {@link SumKind}, so a new sum needs
 * no command of its own. Options are read as text and checked here, so a refusal speaks the reader's language.
 */
@Command(name = "sum")
public final class SumCommand implements Callable<Integer> {
    static final String HELP = "--help";

    private @Nullable CommandSpec spec;

    /** Called by picocli while it builds the command. */
    @Spec
    void setSpec(CommandSpec built) {
        spec = built;
        Words words = wordsOfComputer();
        describe(built, words);
        for (SumKind kind : SumKind.values()) {
            OneSum one = new OneSum(kind);
            CommandSpec child = CommandSpec.wrapWithoutInspection(one);
            one.attach(child, words);
            built.addSubcommand(kind.id(), child);
        }
    }

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        CommandLine line = own.commandLine();
        @Nullable Words words = wordsAskedFor(own);
        if (words == null) {
            return CommandLine.ExitCode.USAGE;
        }
        if (Boolean.TRUE.equals(line.getParseResult().matchedOptionValue(HELP, false))) {
            printHelp(own, words, line.getOut());
            return CommandLine.ExitCode.OK;
        }
        line.getErr().println(words.text("help.first"));
        return CommandLine.ExitCode.USAGE;
    }

    private static void printHelp(CommandSpec own, Words words, PrintWriter out) {
        CommandSpec shown = CommandSpec.create().name(own.qualifiedName());
        describe(shown, words);
        for (SumKind kind : SumKind.values()) {
            CommandSpec child = CommandSpec.create();
            child.usageMessage().description(SumHelp.escape(words.text("sum." + kind.id() + ".title")));
            shown.addSubcommand(kind.id(), child);
        }
        new CommandLine(shown).usage(out);
    }

    private static void describe(CommandSpec spec, Words words) {
        spec.usageMessage().description(SumHelp.escape(words.text("help.about-all")));
        SumHelp.headings(spec, words);
        spec.usageMessage().synopsisSubcommandLabel("<" + words.text("help.sum") + ">");
        spec.addOption(SumHelp.lang(words)).addOption(SumHelp.help(words));
    }

    /** The words in the language asked for here or on a command above, else in the computer's; null once refused. */
    static @Nullable Words wordsAskedFor(CommandSpec spec) {
        @Nullable String language = Language.askedFor(spec);
        return language == null ? null : Words.of(language);
    }

    static Words wordsOfComputer() {
        return Words.of(Language.ofComputer());
    }
}
