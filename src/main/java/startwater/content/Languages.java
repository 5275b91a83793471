package startwater.content;

import java.util.List;

/** The languages in which content stands, by their codes. */
public final class Languages {
    public static final String ENGLISH = "en";
    public static final String SPANISH = "es";
    public static final List<String> ALL = List.of(ENGLISH, SPANISH);

    private Languages() {}
}
