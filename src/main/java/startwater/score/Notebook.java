package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Molar;
import startwater.strip.FishMood;
import startwater.strip.Pad;
import startwater.water.Dose;
import startwater.water.UnionisedAmmonia;
import startwater.water.WaterChange;

/**
 * What a keeper carries from visit to visit: the last readings, and by arithmetic what doses and changes have made of
 * them since. A policy plays from this alone. Mutable; copied for every roll-out.
 */
public final class Notebook {
    private static final double MG_CACO3_PER_MEQ = 50.04;

    private final Scenario scenario;
    private final double volumeL;
    private final double[] value = new double[Pad.values().length];
    private final int[] readAt = new int[Pad.values().length];
    /** What the books say of each pad before it is read at this visit. */
    private final double[] expected = new double[Pad.values().length];

    private int minute;
    private int nextVisit;
    private int previousVisit;
    private double temperatureC;
    private double oxygenMgPerL = Double.NaN;
    private @Nullable FishMood mood;
    private boolean airSeenOn = true;
    private int found;
    private int foundBefore;
    private double previousTemperatureC = Double.NaN;
    private int bufferedAt = Integer.MIN_VALUE / 2;
    private int alive;
    private int flowPercent = 100;
    private boolean airFailed;
    private final Stocking stocking;
    private double saltLeftG;
    private double bicarbonateLeftG;
    private double ammoniumLeftG;
    private Decision last = Decision.LEAVE_ALONE;
    private int decisions;

    public Notebook(Scenario scenario) {
        this(scenario, new Stocking(scenario));
    }

    private Notebook(Scenario scenario, Stocking stocking) {
        this.scenario = scenario;
        this.stocking = stocking;
        this.volumeL = scenario.system().volumeL();
        java.util.Arrays.fill(value, Double.NaN);
        java.util.Arrays.fill(expected, Double.NaN);
        java.util.Arrays.fill(readAt, Integer.MIN_VALUE / 2);
        saltLeftG = scenario.shelf().saltG();
        bicarbonateLeftG = scenario.shelf().bicarbonateG();
        ammoniumLeftG = scenario.shelf().ammoniumChlorideG();
        previousVisit = Integer.MIN_VALUE / 2;
    }

    public Notebook copy() {
        Notebook copy = new Notebook(scenario, stocking.copy());
        System.arraycopy(value, 0, copy.value, 0, value.length);
        System.arraycopy(readAt, 0, copy.readAt, 0, readAt.length);
        System.arraycopy(expected, 0, copy.expected, 0, expected.length);
        copy.minute = minute;
        copy.nextVisit = nextVisit;
        copy.previousVisit = previousVisit;
        copy.temperatureC = temperatureC;
        copy.oxygenMgPerL = oxygenMgPerL;
        copy.mood = mood;
        copy.airSeenOn = airSeenOn;
        copy.found = found;
        copy.foundBefore = foundBefore;
        copy.previousTemperatureC = previousTemperatureC;
        copy.bufferedAt = bufferedAt;
        copy.alive = alive;
        copy.flowPercent = flowPercent;
        copy.airFailed = airFailed;
        copy.saltLeftG = saltLeftG;
        copy.bicarbonateLeftG = bicarbonateLeftG;
        copy.ammoniumLeftG = ammoniumLeftG;
        copy.last = last;
        copy.decisions = decisions;
        return copy;
    }

    /** The notebook after a whole log: what is written at the open visit is read, what was decided is done. */
    public static Notebook of(Scenario scenario, Calendar calendar, Iterable<VisitRecord> visits) {
        Notebook book = new Notebook(scenario);
        for (VisitRecord v : visits) {
            book.enter(v, calendar.nextVisitAfter(v.minute()));
            if (v.decision() != null) {
                book.did(v.decision());
            }
        }
        return book;
    }

    /** Comes to the tank, looks, and reads what is written of this visit. */
    void enter(VisitRecord v, int nextVisitMinute) {
        arrive(v.minute(), nextVisitMinute, v.seen());
        for (Written w : v.written()) {
            read(w.pad(), w.value());
        }
    }

    /** Comes to the tank and looks. */
    void arrive(int atMinute, int nextVisitMinute, Seen seen) {
        arrive(
                atMinute,
                nextVisitMinute,
                new Sight(
                        seen.temperatureC(),
                        seen.oxygenMgPerL() == null ? Double.NaN : seen.oxygenMgPerL(),
                        seen.mood(),
                        seen.air(),
                        seen.flowPercent(),
                        seen.found(),
                        seen.alive(),
                        seen.toCome()));
    }

    /**
     * What a keeper goes by without a strip.
     *
     * @param temperatureC °C
     * @param oxygenMgPerL by meter, mg/L; NaN without one
     * @param mood what the fish show, or null without fish
     * @param air whether the air runs
     * @param flowPercent flow through the filter, % of that through a clean one
     * @param found dead fish found since the visit before
     * @param alive fish counted alive
     * @param toCome fish still to come: alive in the nursery, or not yet bought
     */
    record Sight(
            double temperatureC,
            double oxygenMgPerL,
            @Nullable FishMood mood,
            boolean air,
            int flowPercent,
            int found,
            int alive,
            int toCome) {}

    void arrive(int atMinute, int nextVisitMinute, Sight sight) {
        if (minute != 0) {
            previousVisit = minute;
            previousTemperatureC = temperatureC;
            foundBefore = found;
        }
        minute = atMinute;
        nextVisit = nextVisitMinute;
        System.arraycopy(value, 0, expected, 0, value.length);
        temperatureC = sight.temperatureC();
        oxygenMgPerL = sight.oxygenMgPerL();
        mood = sight.mood();
        airSeenOn = sight.air();
        airFailed |= !airSeenOn;
        flowPercent = sight.flowPercent();
        found = sight.found();
        alive = sight.alive();
        stocking.seen(sight.toCome());
    }

    /** Writes a reading. */
    void read(Pad pad, double reading) {
        boolean before = bothRead();
        value[pad.ordinal()] = reading;
        readAt[pad.ordinal()] = minute;
        if (!before && bothRead()) {
            stocking.tested(minute, value(Pad.AMMONIA), value(Pad.NITRITE), fishIn());
        }
    }

    private boolean bothRead() {
        return readAt[Pad.AMMONIA.ordinal()] == minute && readAt[Pad.NITRITE.ordinal()] == minute;
    }

    /** The decision with no more than the books say is left on the shelf. */
    Decision fromShelf(Decision d) {
        return d.withSalt(Math.min(d.saltG(), saltLeftG))
                .withBicarbonate(Math.min(d.bicarbonateG(), bicarbonateLeftG))
                .withAmmoniumChloride(Math.min(d.ammoniumChlorideG(), ammoniumLeftG));
    }

    /** Loses every reading, what it proved and what was given, but not when it was taken. */
    void forget() {
        java.util.Arrays.fill(value, Double.NaN);
        java.util.Arrays.fill(expected, Double.NaN);
        bufferedAt = Integer.MIN_VALUE / 2;
        last = Decision.LEAVE_ALONE;
        stocking.forget();
    }

    /** Keeps the books after a decision: shares removed, doses added, by the volume on the sheet. */
    void did(Decision d) {
        if (d.change() > 0) {
            mix(Pad.AMMONIA, d.change(), scenario.source().ammoniaMgPerL());
            mix(Pad.NITRITE, d.change(), 0);
            mix(Pad.NITRATE, d.change(), scenario.source().nitrateMgPerL());
            mix(Pad.ALKALINITY, d.change(), scenario.source().alkalinityMgPerL());
            mix(Pad.CHLORIDE, d.change(), scenario.source().chlorideMgPerL());
        }
        add(Pad.CHLORIDE, 1000 * d.saltG() * Dose.SODIUM_CHLORIDE.chlorideGPerG() / volumeL);
        add(Pad.ALKALINITY, alkalinityOf(Dose.SODIUM_BICARBONATE, d.bicarbonateG()));
        add(Pad.ALKALINITY, alkalinityOf(Dose.SODIUM_CARBONATE, d.sodaAshG()));
        double dosed = d.ammoniumChlorideG() * Dose.AMMONIUM_CHLORIDE.tanMgPerG() / volumeL;
        add(Pad.AMMONIA, dosed);
        saltLeftG = Math.max(0, saltLeftG - d.saltG());
        bicarbonateLeftG = Math.max(0, bicarbonateLeftG - d.bicarbonateG());
        ammoniumLeftG = Math.max(0, ammoniumLeftG - d.ammoniumChlorideG());
        if (d.bicarbonateG() > 0) {
            bufferedAt = minute;
        }
        stocking.did(d, minute, value(Pad.AMMONIA, dosed));
        last = d;
        decisions++;
    }

    private double alkalinityOf(Dose compound, double grams) {
        return MG_CACO3_PER_MEQ * compound.alkalinityMeqPerG() * grams / volumeL;
    }

    private void mix(Pad pad, double fraction, double source) {
        double now = value[pad.ordinal()];
        if (!Double.isNaN(now)) {
            value[pad.ordinal()] = WaterChange.after(now, source, fraction);
        }
    }

    private void add(Pad pad, double amount) {
        value[pad.ordinal()] += amount;
    }

    /** The last reading carried forward, in the unit of the pad; NaN where it was never read. */
    public double value(Pad pad) {
        return value[pad.ordinal()];
    }

    /** The last reading, or {@code otherwise} where there is none. */
    public double value(Pad pad, double otherwise) {
        double v = value[pad.ordinal()];
        return Double.isNaN(v) ? otherwise : v;
    }

    /** What the books said of this pad when the keeper came, before it was read; NaN where it never was. */
    double expected(Pad pad) {
        return expected[pad.ordinal()];
    }

    /** Hours since bicarbonate was given; huge where it never was. */
    double hoursSinceBuffer() {
        return (minute - (double) bufferedAt) / 60;
    }

    /** °C by which the water has cooled since the visit before; 0 where there was none. */
    double cooledC() {
        return Double.isNaN(previousTemperatureC) ? 0 : Math.max(0, previousTemperatureC - temperatureC);
    }

    /** Hours since this pad was read; huge where it never was. */
    public double hoursSince(Pad pad) {
        return (minute - (double) readAt[pad.ordinal()]) / 60;
    }

    /** Un-ionised ammonia worked from the last ammonia and pH readings, mg N/L; NaN without them. */
    public double toxicAmmonia() {
        double ph = value(Pad.PH);
        double tan = value(Pad.AMMONIA);
        return Double.isNaN(ph) || Double.isNaN(tan)
                ? Double.NaN
                : tan * UnionisedAmmonia.fraction(Math.min(10, ph), temperatureC);
    }

    /** Grams of a dose that lift chloride by so much, mg/L. */
    double saltFor(double chlorideMgPerL) {
        return chlorideMgPerL * volumeL / (1000 * Dose.SODIUM_CHLORIDE.chlorideGPerG());
    }

    /** Grams of bicarbonate that lift alkalinity by so much, mg/L as CaCO3. */
    double bicarbonateFor(double alkalinityMgPerL) {
        return alkalinityMgPerL * volumeL / (MG_CACO3_PER_MEQ * Dose.SODIUM_BICARBONATE.alkalinityMeqPerG());
    }

    /** Grams of ammonium chloride that lift total ammonia by so much, mg N/L. */
    double ammoniumFor(double tanMgPerL) {
        return tanMgPerL * volumeL / Dose.AMMONIUM_CHLORIDE.tanMgPerG();
    }

    /** Chloride that rule 5 wants against this nitrite, mg/L: 10 to 1 on the ion, at least 100. */
    public static double chlorideWanted(double nitriteMgNPerL) {
        return Math.max(100, 10 * nitriteMgNPerL * Molar.NO2 / Molar.N);
    }

    public Scenario scenario() {
        return scenario;
    }

    public int minute() {
        return minute;
    }

    public double temperatureC() {
        return temperatureC;
    }

    public double oxygenMgPerL() {
        return oxygenMgPerL;
    }

    public @Nullable FishMood mood() {
        return mood;
    }

    public boolean airSeenOn() {
        return airSeenOn;
    }

    /** Whether the air was found off at this or an earlier visit. */
    boolean airFailed() {
        return airFailed;
    }

    /** Flow through the filter, % of that through a clean one. */
    int flowPercent() {
        return flowPercent;
    }

    /** What is known of the fish still to come and of what the filter has proved for them. */
    Stocking stocking() {
        return stocking;
    }

    public int found() {
        return found;
    }

    /** Dead fish found at the visit before this one. */
    int foundBefore() {
        return foundBefore;
    }

    public int alive() {
        return alive;
    }

    public boolean fishIn() {
        return alive > 0;
    }

    public double saltLeftG() {
        return saltLeftG;
    }

    public double bicarbonateLeftG() {
        return bicarbonateLeftG;
    }

    public double ammoniumLeftG() {
        return ammoniumLeftG;
    }

    public double hoursToNextVisit() {
        return (nextVisit - minute) / 60.0;
    }

    public double hoursSincePreviousVisit() {
        return (minute - (double) previousVisit) / 60;
    }

    /** What was decided last. */
    public Decision last() {
        return last;
    }

    public int decisions() {
        return decisions;
    }
}
