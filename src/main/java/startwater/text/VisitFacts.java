package startwater.text;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.fish.Species;
import startwater.quantity.Units;
import startwater.score.Notebook;
import startwater.strip.Pad;
import startwater.tank.TankReadings;
import startwater.water.Dose;
import startwater.water.WaterChange;

/**
 * What a keeper has at hand when deciding: the tank's size, what the fish weigh, what is on the shelf, when somebody comes
 * next, and the books carried from the log.
 *
 * @param scenario the drill
 * @param visit the open visit
 * @param book the log carried forward
 * @param massG mean mass of a fish, as a weighed sample gives it, g; 0 without fish
 * @param rationG table ration a day at this temperature, g; 0 without fish
 * @param nextMinute when the learner is asked next, if nothing changes before
 * @param lastVisit whether nothing is asked after this
 * @param saltLeftG on the shelf, g
 * @param bicarbonateLeftG on the shelf, g
 * @param sodaAshLeftG on the shelf, g
 * @param ammoniumLeftG on the shelf, g
 * @param ripeMediaLeft share of the ripe media at hand that is left, 0..1
 * @param joining fish that a decision puts in now
 */
public record VisitFacts(
        Scenario scenario,
        VisitRecord visit,
        Notebook book,
        double massG,
        double rationG,
        int nextMinute,
        boolean lastVisit,
        double saltLeftG,
        double bicarbonateLeftG,
        double sodaAshLeftG,
        double ammoniumLeftG,
        double ripeMediaLeft,
        int joining) {

    /** The facts of the open visit. @throws IllegalStateException when the run is over */
    public static VisitFacts of(DrillRun run) {
        VisitRecord visit = run.now();
        Scenario s = run.scenario();
        double massG = 0;
        double rationG = 0;
        Scenario.Fish fish = s.fishHereOrPlanned();
        if (fish != null && visit.seen().alive() > 0) {
            // A keeper knows this from a weighed sample and the feed table; it says nothing about the water.
            massG = TankReadings.massG(
                    run.hidden().state(), run.hidden().draw().parameters().strata());
            double share = Species.byId(fish.species())
                    .tableRationFraction(massG, visit.seen().temperatureC());
            rationG = share * massG * visit.seen().alive();
        }
        int next = nextAsked(run);
        return new VisitFacts(
                s,
                visit,
                Notebook.of(s, run.calendar(), run.log().visits()),
                massG,
                rationG,
                next,
                next >= run.calendar().end(),
                run.saltLeftG(),
                run.bicarbonateLeftG(),
                s.shelf().sodaAshG() - used(run),
                run.ammoniumChlorideLeftG(),
                run.ripeMediaLeft(),
                0);
    }

    private static double used(DrillRun run) {
        return run.past().visits().stream()
                .mapToDouble(v -> v.decision() == null ? 0 : v.decision().sodaAshG())
                .sum();
    }

    private static int nextAsked(DrillRun run) {
        Calendar calendar = run.calendar();
        if (run.asked() >= run.scenario().keeper().decisions()) {
            return calendar.end();
        }
        return run.scenario().keeper().decisionVisits().stream()
                .filter(n -> n > run.now().visit() && n < calendar.visits().size())
                .mapToInt(calendar::visit)
                .min()
                .orElse(calendar.end());
    }

    public Seen seen() {
        return visit.seen();
    }

    public boolean fishIn() {
        return seen().alive() + joining > 0;
    }

    /** The same with the fish that a decision puts in: what they are fed counts from now. */
    public VisitFacts with(Decision d) {
        Scenario.Fish planned = scenario.plannedFish();
        int more = planned == null ? 0 : (int) Math.min(toCome(), Math.rint(d.stock() * planned.count()));
        if (planned == null || more == 0) {
            return this;
        }
        double share = Species.byId(planned.species()).tableRationFraction(seen().toComeMassG(), seen().temperatureC());
        int all = seen().alive() + more;
        return new VisitFacts(
                scenario,
                visit,
                book,
                (massG * seen().alive() + seen().toComeMassG() * more) / all,
                rationG + share * seen().toComeMassG() * more,
                nextMinute,
                lastVisit,
                saltLeftG,
                bicarbonateLeftG,
                sodaAshLeftG,
                ammoniumLeftG,
                ripeMediaLeft,
                more);
    }

    /** Whether the media here clog in time. */
    public boolean holdsSolids() {
        return FilterMedia.byId(scenario.system().media()).trappingPerDay() > 0;
    }

    /** Flow through the filter while the pump runs, % of that through a clean one. */
    public int flowPercent() {
        return seen().flowPercent();
    }

    /** Planned fish that are not in yet. */
    public int toCome() {
        return seen().toCome();
    }

    /** Whether there is air that runs without mains power. */
    public boolean spareAir() {
        return scenario.shelf().spareAirKlaPerHour() > 0;
    }

    public double volumeL() {
        return scenario.system().volumeL();
    }

    /** Days for which the orders stand. */
    public double daysToNext() {
        return (nextMinute - visit.minute()) / (double) Calendar.DAY;
    }

    /** Whether the new water holds chlorine that must be neutralised. */
    public boolean chlorinated() {
        return scenario.source().statedChlorineMgPerL() > 0;
    }

    /** On the shelf of a compound, g. */
    public double leftG(Dose compound) {
        return switch (compound) {
            case SODIUM_CHLORIDE -> saltLeftG;
            case SODIUM_BICARBONATE -> bicarbonateLeftG;
            case SODIUM_CARBONATE -> sodaAshLeftG;
            case AMMONIUM_CHLORIDE -> ammoniumLeftG;
            default -> 0;
        };
    }

    /**
     * What the books say a pad's value becomes by the change and the doses of a decision, before the tank goes on; null
     * where it was never read.
     */
    public @Nullable Double after(Pad pad, Decision d) {
        double now = book.value(pad);
        if (Double.isNaN(now)) {
            return null;
        }
        double mixed = d.change() > 0 ? WaterChange.after(now, source(pad), d.change()) : now;
        return mixed + added(pad, d);
    }

    private double source(Pad pad) {
        return switch (pad) {
            case AMMONIA -> scenario.source().ammoniaMgPerL();
            case NITRATE -> scenario.source().nitrateMgPerL();
            case ALKALINITY -> scenario.source().alkalinityMgPerL();
            case CHLORIDE -> scenario.source().chlorideMgPerL();
            case NITRITE, PH, CHLORINE -> 0;
        };
    }

    /** What the doses of a decision add to what a pad answers to, in the pad's unit. */
    public double added(Pad pad, Decision d) {
        return switch (pad) {
            case CHLORIDE -> 1000 * d.saltG() * Dose.SODIUM_CHLORIDE.chlorideGPerG() / volumeL();
            case ALKALINITY ->
                Units.caco3FromMeq(d.bicarbonateG() * Dose.SODIUM_BICARBONATE.alkalinityMeqPerG()
                                + d.sodaAshG() * Dose.SODIUM_CARBONATE.alkalinityMeqPerG())
                        / volumeL();
            case AMMONIA -> d.ammoniumChlorideG() * Dose.AMMONIUM_CHLORIDE.tanMgPerG() / volumeL();
            case NITRITE, NITRATE, PH, CHLORINE -> 0;
        };
    }

    /** The species here or planned. */
    public @Nullable Species species() {
        Scenario.Fish fish = scenario.fish() != null ? scenario.fish() : scenario.plannedFish();
        return fish == null ? null : Species.byId(Objects.requireNonNull(fish).species());
    }

    /** The pad whose next reading is worth foreseeing: what rises now decides. */
    public Pad padToForesee() {
        if (book.value(Pad.NITRITE, 0) >= 0.2) {
            return Pad.NITRITE;
        }
        boolean thin = scenario.skills().contains("alkalinity-ph") && book.value(Pad.ALKALINITY, 200) < 80;
        return thin ? Pad.ALKALINITY : Pad.AMMONIA;
    }
}
