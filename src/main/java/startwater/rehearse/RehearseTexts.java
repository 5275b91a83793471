package startwater.rehearse;

import startwater.text.Language;
import startwater.text.Texts;

/** The words of a rehearsal, for terminal, window and paper. */
public final class RehearseTexts {
    /** The language files; a form's labels and helps stand in a file of their own. */
    public static final String FILE = "/startwater/rehearse/rehearse";

    public static final String FORM = "/startwater/rehearse/form";

    private RehearseTexts() {}

    /** The words of a language. */
    public static Texts of(Language language) {
        return Texts.of(language, Texts.DRILL, FILE, FORM);
    }
}
