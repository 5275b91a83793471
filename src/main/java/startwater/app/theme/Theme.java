package startwater.app.theme;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Locale;

/** The looks to choose from. */
public enum Theme {
    LIGHT,
    DARK,
    /** Light with stronger contrast and large type, to be read from the back of a room. */
    PROJECTOR;

    /** How much larger this look is than the others at the same text size. */
    public double baseScale() {
        return this == PROJECTOR ? 1.4 : 1.0;
    }

    /** The class of the scene's root that picks this look's colours in the style sheet. */
    public String styleClass() {
        return "sw-" + name().toLowerCase(Locale.ROOT);
    }

    String controlStylesheet() {
        return this == DARK ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet();
    }
}
