package startwater.score;

import org.junit.jupiter.api.Tag;

/** The rankings on a few tanks of each species. */
@Tag("slow")
class RankingsTest extends Rankings {
    @Override
    int tanks() {
        return 2;
    }
}
