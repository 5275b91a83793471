package startwater.bench;

import java.util.List;
import startwater.fish.Species;

/** One or more worked examples of every sum, with every line of working and every note among them. */
final class SumSamples {
    private SumSamples() {}

    static List<Sum> all() {
        Species tilapia = Species.byId("nile-tilapia");
        return List.of(
                WaterSums.toxicAmmonia(1.3, 8.1, 26.5),
                WaterSums.oxygen(27, 850, 2),
                WaterSums.waterChange(4.3, 1.1, 0.2),
                WaterSums.waterChange(2, 2, 2),
                DoseSums.salt(365, 2.4, 6, 10),
                DoseSums.salt(365, 0.1, 60, 10),
                DoseSums.buffer(780, 35, 92),
                DoseSums.ammoniumChloride(333, 1.7),
                DoseSums.ammoniaSolution(333, 1.7, 9.8),
                DoseSums.dechlorinate(145, 2.2),
                FeedSums.ration(230, 7.7, tilapia, 27),
                FeedSums.ration(230, 7.7, tilapia, 12),
                FeedSums.load(1.8, 940, 38, 4.5),
                ClosedWater.after(27, 66, 7.3, new ClosedWater.Change(20, 5, 1, -2)),
                PlanSums.afterChange(4.2, 35, 0.3),
                PlanSums.settle(2, 1.4, 4),
                PlanSums.until(118, 80, 6.5),
                PlanSums.catchUp(0.03, 1, 1.6),
                PlanSums.airOff(6.8, 3, 14, 2600, 420),
                PlanSums.waste(75, 38, 2100),
                PlanSums.asNitrogen(3.1),
                PlanSums.dilution(2, 2, 3),
                PlanSums.volumeBySalt(400, 120));
    }
}
