package startwater.app.model;

/** Look-backs for tests of the window. */
public final class DebriefModels {
    private DebriefModels() {}

    /** Three visits read as the pads lay, with nothing done. */
    public static DebriefModel afterThree() {
        return DebriefModelTest.afterThree(true);
    }
}
