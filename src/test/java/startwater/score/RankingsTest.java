package startwater.score;

/** The rankings on a few tanks of each species. */
class RankingsTest extends Rankings {
    @Override
    int tanks() {
        return 2;
    }
}
