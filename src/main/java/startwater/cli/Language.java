package startwater.cli;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import startwater.bench.Words;

/** Which language the one at the terminal reads. */
final class Language {
    static final String OPTION = "--lang";

    private Language() {}

    /** The language asked for here or on a command above, else the computer's; null once an unknown one was refused. */
    static @Nullable String askedFor(CommandSpec spec) {
        for (@Nullable CommandSpec at = spec; at != null; at = at.parent()) {
            @Nullable OptionSpec option = at.findOption(OPTION);
            if (option != null && option.getValue() instanceof String language) {
                if (Words.LANGUAGES.contains(language)) {
                    return language;
                }
                spec.commandLine().getErr().println(OPTION + ": " + refusal(language));
                return null;
            }
        }
        return ofComputer();
    }

    private static String refusal(String language) {
        return Words.of(ofComputer())
                .text(
                        "refusal.unknown-choice",
                        Map.of("value", language, "allowed", String.join(", ", Words.LANGUAGES)));
    }

    static String ofComputer() {
        String language = Locale.getDefault().getLanguage();
        return Words.LANGUAGES.contains(language) ? language : Words.LANGUAGES.get(0);
    }
}
