package startwater.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What every command takes. */
final class CommonOptions {
    /** Where it is left out, one given to a command above counts. */
    @Option(names = "--lang", paramLabel = "en|es", descriptionKey = "lang")
    @Nullable
    String lang;

    @Option(names = "--help", usageHelp = true, descriptionKey = "help")
    boolean help;
}
