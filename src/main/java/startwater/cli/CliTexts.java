package startwater.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import startwater.text.Language;
import startwater.text.Texts;

/** The words of the commands, in the language asked for with {@code --lang} or the computer's. */
final class CliTexts {
    static final String FILE = "/startwater/cli/cli";
    private static final String LANG = "--lang";

    private CliTexts() {}

    static Texts of(Language language) {
        return Texts.of(language, Texts.DRILL, Texts.RECORD, FILE, CrashLog.WORDS);
    }

    /** The words for a command that is running: those asked for at it, or above it. @throws WrongUseException for a language there is not */
    static Texts of(@Nullable String asked, CommandSpec spec) {
        if (asked != null) {
            return of(language(asked));
        }
        for (@Nullable CommandSpec at = spec.parent(); at != null; at = at.parent()) {
            @Nullable OptionSpec option = at.findOption(LANG);
            if (option != null && option.getValue() instanceof String code) {
                return of(language(code));
            }
        }
        return of(Language.ofComputer());
    }

    static Language language(String code) {
        for (Language language : Language.values()) {
            if (language.code().equals(code)) {
                return language;
            }
        }
        throw new WrongUseException(of(Language.ofComputer()).text("cli.noLanguage", code));
    }

    /** The language of a command line before it is parsed: for help and refusals. */
    static Language asked(String... args) {
        String code = value(LANG, args);
        return code == null ? Language.ofComputer() : Language.of(code);
    }

    /** The first value of an option on a command line that is not parsed yet, after a space or an equals sign; or null. */
    static @Nullable String value(String option, String... args) {
        for (int i = 0; i < args.length; i++) {
            if (args[i].equals(option) && i + 1 < args.length) {
                return args[i + 1];
            }
            if (args[i].startsWith(option + "=")) {
                return args[i].substring(option.length() + 1);
            }
        }
        return null;
    }
}
