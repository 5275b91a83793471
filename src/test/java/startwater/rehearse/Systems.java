package startwater.rehearse;

import java.nio.file.Path;
import java.util.List;

/** Three systems of our own invention, unlike any drill that ships. */
public final class Systems {
    /** Small and warm, fish in, sponge filter, US units. */
    public static final String SPONGE_BARREL = "sponge-barrel";
    /** Cold and large, without fish, moving bed. */
    public static final String TROUT_RACEWAY = "trout-raceway";
    /** Rain water of little alkalinity, fish in, and a second system to move to. */
    public static final String RAIN_CARP = "rain-carp";

    public static final List<String> ALL = List.of(SPONGE_BARREL, TROUT_RACEWAY, RAIN_CARP);

    private Systems() {}

    public static Form form(String name) {
        try {
            return FormFile.read(Path.of("src/test/resources/rehearse", name + FormFile.ENDING));
        } catch (FormFile.Unreadable e) {
            throw new AssertionError(name, e);
        }
    }

    static List<String> codes(List<Finding> findings, Finding.Weight weight) {
        return findings.stream()
                .filter(f -> f.weight() == weight)
                .map(Finding::code)
                .toList();
    }
}
