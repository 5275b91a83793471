package startwater.score;

import org.junit.jupiter.api.Tag;

/** The rankings on eighty tanks, twenty of each species. */
@Tag("full")
class RankingsOverManyTanksTest extends Rankings {
    @Override
    int tanks() {
        return 20;
    }
}
