package startwater.rehearse;

import java.util.Arrays;
import java.util.List;

/** How a system is started. */
public enum Starting {
    /** With the fish in it from the first day. */
    FISH_IN("fish-in"),
    /** With ammonium chloride and no fish. */
    FISHLESS("fishless"),
    /** Without fish, with media from a ripe filter hung in. */
    RIPE_MEDIA("ripe-media");

    private final String id;

    Starting(String id) {
        this.id = id;
    }

    /** Its name in files. */
    public String id() {
        return id;
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(Starting::id).toList();
    }

    static Starting byId(String id) {
        return Arrays.stream(values()).filter(s -> s.id.equals(id)).findFirst().orElse(FISHLESS);
    }
}
