package startwater.rehearse;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import startwater.text.Language;
import startwater.text.Texts;

/** The words of a rehearsal, for terminal, window and paper; read once. */
public final class RehearseTexts {
    /** The language files; a form's labels and helps stand in a file of their own. */
    public static final String FILE = "/startwater/rehearse/rehearse";

    public static final String FORM = "/startwater/rehearse/form";

    private static final Map<Language, Texts> ALL = Arrays.stream(Language.values())
            .collect(Collectors.toMap(Function.identity(), language -> Texts.of(language, Texts.DRILL, FILE, FORM)));

    private RehearseTexts() {}

    /** The words of a language. */
    public static Texts of(Language language) {
        return Objects.requireNonNull(ALL.get(language));
    }
}
