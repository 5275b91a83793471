package startwater.score;

import startwater.bench.FeedSums;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.fish.Species;

/**
 * What a keeper knows of the fish still to come, and of what the filter has proved for them: full doses of ammonia that
 * were gone by the next test, nitrite too, and tests since the last fish went in that stood under 1 mg/L. Mutable.
 */
final class Stocking {
    /** Readings of ammonia and nitrite that count as near zero, mg N/L: the strip's own blur at its low end. */
    private static final double NEAR_ZERO = 0.25;
    /** A dose that brings ammonia to this at least is a full one, mg N/L: 2 is aimed at. */
    private static final double FULL_DOSE = 1.5;
    /** Both readings under this are no burden to fish, mg N/L. */
    private static final double CALM = 1;

    private static final int DOSE_STANDS = Calendar.DAY / 2;
    private static final int TESTS_APART = 20 * 60;

    private final int planned;
    private final double plannedLoadMgPerLPerDay;
    private final boolean beside;
    private final boolean bagged;
    private int toCome;
    private int moved;
    private int wentIn;
    private int steps;
    private double mediaLeft;
    private double dosed = Double.NaN;
    private int dosedAt;
    private int passes;
    private double proved;
    private int calm;
    private int calmFrom;

    Stocking(Scenario s) {
        Scenario.Fish fish = s.plannedFish();
        planned = fish == null ? 0 : fish.count();
        plannedLoadMgPerLPerDay = fish == null ? 0 : loadMgPerLPerDay(s, fish);
        beside = s.nursery() != null;
        bagged = s.bagged();
        toCome = planned;
        mediaLeft = beside || bagged ? 1 : 0;
    }

    /** Ammonia that the full ration of these fish, at the mass on the sheet, makes in a day, mg N/L. */
    static double loadMgPerLPerDay(Scenario s, Scenario.Fish fish) {
        return 1000
                * fish.count()
                * fish.massG()
                * Species.byId(fish.species()).feed().fractionAtBest(fish.massG())
                * FeedSums.TAN_PER_PROTEIN
                * fish.proteinPercent()
                / 100
                / s.system().volumeL();
    }

    private Stocking(Stocking of) {
        planned = of.planned;
        plannedLoadMgPerLPerDay = of.plannedLoadMgPerLPerDay;
        beside = of.beside;
        bagged = of.bagged;
        toCome = of.toCome;
        moved = of.moved;
        wentIn = of.wentIn;
        steps = of.steps;
        mediaLeft = of.mediaLeft;
        dosed = of.dosed;
        dosedAt = of.dosedAt;
        passes = of.passes;
        proved = of.proved;
        calm = of.calm;
        calmFrom = of.calmFrom;
    }

    Stocking copy() {
        return new Stocking(this);
    }

    void seen(int countToCome) {
        toCome = countToCome;
    }

    /** Ammonia and nitrite were read at one visit, mg N/L. */
    void tested(int minute, double ammonia, double nitrite, boolean fishIn) {
        if (fishIn) {
            if (minute - calmFrom >= TESTS_APART) {
                calm = ammonia < CALM && nitrite < CALM ? calm + 1 : 0;
                calmFrom = minute;
            }
        } else if (!Double.isNaN(dosed) && minute - dosedAt >= DOSE_STANDS) {
            if (ammonia <= NEAR_ZERO && nitrite <= NEAR_ZERO) {
                passes++;
                proved = dosed * Calendar.DAY / Math.max(Calendar.DAY, minute - dosedAt);
                dosed = Double.NaN;
            } else {
                passes = 0;
            }
        }
    }

    /** @param ammonia what it stands at by the books after what was done, mg N/L */
    void did(Decision d, int minute, double ammonia) {
        if (d.ammoniumChlorideG() > 0) {
            dosed = ammonia >= FULL_DOSE ? ammonia : Double.NaN;
            dosedAt = minute;
        }
        wentIn = arriving(d.stock());
        moved += wentIn;
        toCome -= wentIn;
        if (wentIn > 0) {
            steps++;
            calm = 0;
            calmFrom = minute;
        }
        mediaLeft = bagged ? Math.max(0, mediaLeft - d.ripeMedia()) : mediaLeft;
    }

    void forget() {
        dosed = Double.NaN;
        passes = 0;
        calm = 0;
    }

    /** Fish that a decision to stock so much brings in. @param share of the planned fish, 0..1 */
    int arriving(double share) {
        return Math.min(toCome, (int) Math.rint(share * planned));
    }

    int planned() {
        return planned;
    }

    int toCome() {
        return toCome;
    }

    /** Fish moved or bought so far. */
    int moved() {
        return moved;
    }

    /** How many times fish were brought in. */
    int steps() {
        return steps;
    }

    /** Fish that the latest decision brought in. */
    int wentIn() {
        return wentIn;
    }

    /** Whether the fish to come live in a nursery beside. */
    boolean beside() {
        return beside;
    }

    /** Fish that have died in the nursery since the first visit; 0 without one. */
    int lostBeside() {
        return beside ? Math.max(0, planned - moved - toCome) : 0;
    }

    /** Whether ripe media are those by which fish in a nursery live. */
    boolean mediaOfNursery() {
        return beside && !bagged;
    }

    /** Share of the ripe media at hand that is left, 0..1. */
    double mediaLeft() {
        return mediaLeft;
    }

    /** Full doses in a row that were gone by the next test, nitrite too. */
    int passes() {
        return passes;
    }

    /** Share of the planned full ration that the last of them proves the filter to carry; over 1 where it is more. */
    double provedShare() {
        return plannedLoadMgPerLPerDay > 0 ? proved / plannedLoadMgPerLPerDay : 0;
    }

    /** Ammonia that the last of them proves the filter to clear, mg N/L a day. */
    double provedMgPerLPerDay() {
        return proved;
    }

    /** Tests a day apart since the last fish went in, in a row, with ammonia and nitrite under 1 mg N/L. */
    int calm() {
        return calm;
    }
}
