package startwater.app.view;

import java.util.Locale;

/** Names of values as they stand in text keys. */
final class ScreenKeys {
    private ScreenKeys() {}

    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
