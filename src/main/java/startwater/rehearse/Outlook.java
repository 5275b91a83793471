package startwater.rehearse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to expect of a start-up that keeps the standing rules, over hidden tanks drawn from what is not known. A forecast
 * only, summed up to the day on which the filter is ready and proved: fish move when two real tests in a row have passed, never because a day has come.
 *
 * @param tanks how many hidden tanks were played
 * @param days how long each was followed, d from the filling
 * @param fishIn whether fish are in it from the start
 * @param fish their number
 * @param ready day on which the filter carries the full ration with ammonia and nitrite under 1 mg/L
 * @param readyBy chance that it does, by day 0, 1, ..., {@code days}
 * @param ammonia at noon each day, mg N/L
 * @param nitrite at noon each day, mg N/L
 * @param ammoniaPeakDay day of the highest ammonia
 * @param ammoniaPeak mg N/L
 * @param nitritePeakDay day of the highest nitrite
 * @param nitritePeak mg N/L
 * @param rationG table ration of all fish at their first mass and this temperature, g a day
 * @param carriedG feed the filter carries once it is ready, or at the end, g a day
 * @param carriedFish fish of their first mass that this feeds
 * @param volumes water changed, tank volumes
 * @param litres water changed, L
 * @param saltG salt, g
 * @param bicarbonateG baking soda, g
 * @param ammoniumG ammonium chloride, g
 * @param neutraliserG sodium thiosulfate for the filling and all changes, g
 * @param strips test strips
 * @param chlorideStrips chloride strips
 * @param workDays days with more to do than to look, feed and test
 * @param workShare share of the tanks with such work, by day
 * @param deaths fish that die
 * @param disasters share of the tanks in which more than half of the fish die, 0..1
 * @param second the second system, or null
 */
public record Outlook(
        int tanks,
        int days,
        boolean fishIn,
        int fish,
        Spread ready,
        List<Double> readyBy,
        List<Spread> ammonia,
        List<Spread> nitrite,
        Spread ammoniaPeakDay,
        Spread ammoniaPeak,
        Spread nitritePeakDay,
        Spread nitritePeak,
        double rationG,
        Spread carriedG,
        Spread carriedFish,
        Spread volumes,
        Spread litres,
        Spread saltG,
        Spread bicarbonateG,
        Spread ammoniumG,
        Spread neutraliserG,
        Spread strips,
        Spread chlorideStrips,
        Spread workDays,
        List<Double> workShare,
        Spread deaths,
        double disasters,
        @Nullable Second second) {
    /**
     * The system to which the fish move.
     *
     * @param massG mean mass of the fish when they are to move, g
     * @param ready days from its filling until it is ready
     * @param days how long it was followed
     * @param moveDay day on which they are to move, from the filling of the first; null where none is told
     * @param latestStart the last safe day to fill it, from the filling of the first: the day of the move less the days in which
     *     nine tanks in ten are ready; null where no day is known or none is safe
     */
    public record Second(
            double massG,
            Spread ready,
            int days,
            @Nullable Integer moveDay,
            @Nullable Integer latestStart) {}

    public Outlook {
        readyBy = List.copyOf(readyBy);
        ammonia = List.copyOf(ammonia);
        nitrite = List.copyOf(nitrite);
        workShare = List.copyOf(workShare);
    }

    /** Chance that the filter is ready by a day, 0..1. */
    public double readyBy(int day) {
        return readyBy.get(Math.max(0, Math.min(days, day)));
    }

    /** First and last day on which at least this share of the tanks asks for hands; both -1 where there is none. */
    public int[] busy(double share) {
        int first = -1;
        int last = -1;
        for (int day = 0; day < workShare.size(); day++) {
            if (workShare.get(day) >= share) {
                first = first < 0 ? day : first;
                last = day;
            }
        }
        return new int[] {first, last};
    }
}
