package startwater.content;

import java.util.List;
import startwater.bench.Words;

/** The languages in which content stands, by their codes. */
public final class Languages {
    public static final String ENGLISH = "en";
    public static final String SPANISH = "es";
    public static final List<String> ALL = Words.LANGUAGES;

    private Languages() {}
}
