package startwater.text;

import java.util.Locale;

/** The languages of the tutor. */
public enum Language {
    EN("en", "English"),
    ES("es", "Español");

    private final String code;
    private final String ownName;

    Language(String code, String ownName) {
        this.code = code;
        this.ownName = ownName;
    }

    /** Code as in file names and options. */
    public String code() {
        return code;
    }

    /** Its name in itself. */
    public String ownName() {
        return ownName;
    }

    public Locale locale() {
        return Locale.forLanguageTag(code);
    }

    /** The language of this code; English for any other. */
    public static Language of(String code) {
        return ES.code.equals(code) ? ES : EN;
    }

    /** The computer's language where there are words for it, else English. */
    public static Language ofComputer() {
        return of(Locale.getDefault().getLanguage());
    }
}
