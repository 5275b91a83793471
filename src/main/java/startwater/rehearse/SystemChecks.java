package startwater.rehearse;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.fish.Species;
import startwater.quantity.OutOfRangeException;
import startwater.tank.SourceWater;
import startwater.text.Refusal;

/** What is impossible, what will hurt, and what was taken for granted in the learner's system. */
public final class SystemChecks {
    /** Densest stock that a drill takes, kg/m3 (common practice, no source). */
    private static final double MOST_KG_PER_M3 = 60;
    /** Dense for a small system and a beginner, kg/m3 (common practice, no source). */
    private static final double MANY_KG_PER_M3 = 25;
    /** Over this share of what the media can carry a filter has nothing left for a bad day (common practice, no source). */
    private static final double HIGH_LOAD = 0.6;

    private static final double LEAST_VOLUME_L = 50;
    private static final double MOST_VOLUME_L = 100_000;
    /** Under this appetite fish hardly eat (common practice, no source). */
    private static final double LITTLE_APPETITE = 0.3;
    /** Share of the ammonia that one pass through a filter takes (common practice, no source: 30 to 50 %). */
    private static final double TAKEN_BY_A_PASS = 0.4;

    private final Form form;
    private final OwnSystem own;
    private final List<Finding> found = new ArrayList<>();

    private SystemChecks(Form form) {
        this.form = form;
        this.own = OwnSystem.of(form);
    }

    /** All findings of a form: refusals first, then warnings, then what was assumed. */
    public static List<Finding> of(Form form) {
        SystemChecks checks = new SystemChecks(form);
        checks.unreadable();
        checks.vessel(checks.own.vessel(), false);
        checks.fish();
        checks.water();
        new KeeperChecks(checks.own, checks.found).check();
        checks.second();
        List<Finding> ordered = new ArrayList<>(checks.found);
        ordered.sort(java.util.Comparator.comparing(Finding::weight));
        return List.copyOf(ordered);
    }

    /** Whether these findings let a rehearsal begin. */
    public static boolean possible(List<Finding> findings) {
        return findings.stream().noneMatch(f -> f.weight() == Finding.Weight.REFUSE);
    }

    private void unreadable() {
        for (Entry entry : Entry.values()) {
            Refusal refusal = FormReader.refusal(form, entry);
            if (refusal != null) {
                found.add(Finding.refuse(entry, "unreadable", form.answer(entry), refusal));
            }
        }
    }

    private void vessel(OwnSystem.Vessel vessel, boolean second) {
        Entry volumeEntry = second ? Entry.SECOND_VOLUME : Entry.VOLUME;
        Double volume = vessel.volumeL();
        if (volume == null) {
            found.add(Finding.refuse(volumeEntry, "noVolume"));
        } else if (volume < LEAST_VOLUME_L || volume > MOST_VOLUME_L) {
            found.add(Finding.refuse(
                    volumeEntry, "volumeRange", litres(volume), litres(LEAST_VOLUME_L), litres(MOST_VOLUME_L)));
        }
        Entry mediaEntry = second ? Entry.SECOND_MEDIA : Entry.MEDIA;
        Entry litresEntry = second ? Entry.SECOND_LITRES : Entry.MEDIA_LITRES;
        Prior.LogNormal area = Reckoned.areaM2(vessel);
        if (area == null || area.median() < OwnScenario.LEAST_AREA_M2) {
            found.add(Finding.refuse(vessel.media() == null ? mediaEntry : litresEntry, "noMedia"));
        } else if (vessel.media() == null) {
            found.add(Finding.assumed(mediaEntry, "mediaKind"));
        }
        Entry warmthEntry = second ? Entry.SECOND_SET_POINT : Entry.SET_POINT;
        Double water = vessel.waterC();
        if (water == null) {
            found.add(Finding.refuse(Entry.ROOM, "noTemperature"));
        } else {
            warmth(water, warmthEntry);
            if (vessel.setPointC() != null && vessel.roomC() == null && !second) {
                found.add(Finding.assumed(Entry.ROOM, "roomUnknown", degrees(vessel.setPointC())));
            }
        }
        if (volume != null && area != null && water != null) {
            carried(vessel, volume, area, water, litresEntry);
        }
    }

    private void warmth(double water, Entry entry) {
        Species species = own.stock().species();
        if (species == null) {
            return;
        }
        if (water < species.coldLimitC() || water > species.warmLimitC()) {
            found.add(Finding.refuse(
                    entry,
                    "temperature",
                    degrees(water),
                    degrees(species.coldLimitC()),
                    degrees(species.warmLimitC())));
        } else if (species.appetite().temperature(water) < LITTLE_APPETITE) {
            found.add(Finding.warn(entry, "littleAppetite", degrees(water)));
        }
        Double room = own.vessel().roomC();
        if (room != null && (room < species.coldLimitC() || room > species.warmLimitC())) {
            found.add(Finding.warn(Entry.ROOM, "roomHarms", degrees(room)));
        }
    }

    /** Load against media and flow, in a vessel. */
    private void carried(
            OwnSystem.Vessel vessel, double volume, Prior.LogNormal area, double water, Entry litresEntry) {
        Species species = own.stock().species();
        Integer count = own.stock().count();
        Double mass = own.stock().massG();
        if (species == null || count == null || mass == null) {
            return;
        }
        double protein = OwnScenario.protein(own);
        double share = Reckoned.loadShare(species, count, mass, protein, area.median(), water);
        double ration = Reckoned.rationG(species, count, mass, water);
        if (share > 1) {
            found.add(Finding.refuse(
                    litresEntry,
                    "loadOverMedia",
                    grams(ration),
                    new Amount(area.median(), Measure.AREA),
                    grams(ration / share),
                    StrictMath.floor(count / share)));
        } else if (share > HIGH_LOAD) {
            found.add(Finding.warn(litresEntry, "loadHigh", 100 * share));
        }
        Double flow = vessel.pumpLPerHour();
        double needed = Reckoned.ammoniaMgPerDay(species, count, mass, protein) / 24 / TAKEN_BY_A_PASS;
        if (flow != null && flow < needed) {
            found.add(Finding.warn(
                    Entry.PUMP_FLOW, "flowLow", new Amount(flow, Measure.FLOW), new Amount(needed, Measure.FLOW)));
        }
        dosable(species, count, mass, protein, volume);
    }

    /** A start without fish feeds the filter about 2 mg/L a day; more than that it cannot prove. */
    private void dosable(Species species, int count, double mass, double protein, double volume) {
        double perDay = Reckoned.ammoniaMgPerDay(species, count, mass, protein) / volume;
        boolean fishless = own.starting() != Starting.FISH_IN;
        if (fishless
                && perDay > OwnScenario.DOSE_MG_PER_L
                && found.stream().noneMatch(f -> f.code().equals("overDose"))) {
            found.add(Finding.warn(
                    Entry.COUNT,
                    "overDose",
                    perDay,
                    OwnScenario.DOSE_MG_PER_L,
                    StrictMath.floor(count * OwnScenario.DOSE_MG_PER_L / perDay)));
        }
    }

    private void fish() {
        OwnSystem.Stock stock = own.stock();
        Species species = stock.species();
        Integer count = stock.count();
        Double mass = stock.massG();
        if (species == null) {
            found.add(Finding.refuse(Entry.SPECIES, "noSpecies"));
        }
        if (count == null) {
            found.add(Finding.refuse(Entry.COUNT, "noCount"));
        }
        if (mass == null) {
            found.add(Finding.refuse(Entry.MASS, "noMass"));
        } else if (species != null && !inTable(species, mass)) {
            found.add(Finding.refuse(
                    Entry.MASS,
                    "massOutside",
                    grams(mass),
                    grams(species.feed().massRangeG().low()),
                    grams(species.feed().massRangeG().high())));
        }
        if (stock.proteinPercent() == null) {
            found.add(Finding.assumed(Entry.PROTEIN, "protein", OwnScenario.PROTEIN_PERCENT));
        }
        Double volume = own.vessel().volumeL();
        if (species != null && count != null && mass != null && volume != null && inTable(species, mass)) {
            crowded(count * mass / volume);
            oxygen(species, count, mass, volume);
        }
    }

    private static boolean inTable(Species species, double mass) {
        return mass >= species.feed().massRangeG().low()
                && mass <= species.feed().massRangeG().high();
    }

    private void crowded(double kgPerM3) {
        if (kgPerM3 > MOST_KG_PER_M3) {
            found.add(Finding.refuse(Entry.COUNT, "tooDense", density(kgPerM3), density(MOST_KG_PER_M3)));
        } else if (kgPerM3 > MANY_KG_PER_M3) {
            found.add(Finding.warn(Entry.COUNT, "dense", density(kgPerM3), density(MANY_KG_PER_M3)));
        }
    }

    private void oxygen(Species species, int count, double mass, double volume) {
        Double water = own.vessel().waterC();
        if (water == null || water > 40) {
            return;
        }
        Prior.LogNormal kla = Reckoned.kla(own.air(), volume);
        double use = Reckoned.oxygenUseMgPerHour(species, count, mass, OwnScenario.protein(own), water);
        double atCritical = Reckoned.oxygenGainMgPerHour(kla.median(), volume, water, species.criticalOxygenMgPerL());
        double weak = kla.at(-1.2816);
        double atGuidance = Reckoned.oxygenGainMgPerHour(
                weak, volume, water, species.guidance().oxygenMgPerL());
        if (use > atCritical) {
            found.add(Finding.refuse(
                    Entry.AIR_POWER,
                    "noOxygen",
                    use / 1000,
                    atCritical / 1000,
                    StrictMath.floor(count * atCritical / use)));
        } else if (use > atGuidance) {
            found.add(Finding.warn(
                    Entry.AIR_POWER,
                    "littleOxygen",
                    use / 1000,
                    species.guidance().oxygenMgPerL()));
        }
        if (own.air().untold()) {
            found.add(Finding.assumed(Entry.AIR_STRENGTH, "airUnknown"));
        }
        if (!own.air().spare()) {
            found.add(Finding.warn(
                    Entry.SPARE_AIR,
                    "noSpare",
                    Amount.twoFigures(Reckoned.minutesWithoutAir(species, use, volume), RoundingMode.FLOOR)));
        }
    }

    private void water() {
        OwnSystem.Tap tap = own.tap();
        assumedWhereNull(tap.ph(), Entry.TAP_PH, "tapPh", OwnTap.usualPh(tap).value());
        assumedWhereNull(tap.alkalinityMgPerL(), Entry.TAP_ALKALINITY, "tapAlkalinity", OwnTap.usualAlkalinity(tap));
        assumedWhereNull(
                tap.chlorideMgPerL(),
                Entry.TAP_CHLORIDE,
                "tapChloride",
                Facts.of("tap.chloride").value());
        assumedWhereNull(tap.chlorineMgPerL(), Entry.TAP_CHLORINE, "tapChlorine", OwnTap.statedChlorine(own));
        Double ph = tap.ph();
        Double alkalinity = tap.alkalinityMgPerL();
        double spread = Facts.of("strip.reading").sd();
        if (ph != null
                && alkalinity != null
                && !(exists(ph, alkalinity * (1 - spread)) && exists(ph, alkalinity * (1 + spread)))) {
            found.add(Finding.refuse(Entry.TAP_PH, "noSuchWater", ph, alkalinity));
        }
    }

    private void assumedWhereNull(@Nullable Double value, Entry entry, String code, double taken) {
        if (value == null) {
            found.add(Finding.assumed(entry, code, taken));
        }
    }

    private boolean exists(double ph, double alkalinity) {
        try {
            Scenario.Source told = OwnTap.source(own);
            SourceWater water = SourceWater.read(
                    told.temperatureC(),
                    ph,
                    alkalinity,
                    told.ammoniaMgPerL(),
                    told.nitrateMgPerL(),
                    told.chlorideMgPerL(),
                    0,
                    0);
            // The carbon dioxide of such water is all but a part of its inorganic carbon: 500 mg/L are 11.4 mmol/L.
            return water.dicMmolPerL() - water.alkalinityMeqPerL() < 11.4;
        } catch (OutOfRangeException e) {
            return false;
        }
    }

    private void second() {
        OwnSystem.Second second = own.second();
        if (second != null) {
            vessel(second.vessel(), true);
            if (own.moveDay() == null) {
                found.add(Finding.assumed(Entry.MOVE_DAY, "noMoveDay"));
            }
        }
    }

    private static Amount litres(double value) {
        return new Amount(value, Measure.VOLUME);
    }

    private static Amount grams(double value) {
        return new Amount(value, Measure.MASS);
    }

    private static Amount degrees(double value) {
        return new Amount(value, Measure.TEMPERATURE);
    }

    private static Amount density(double value) {
        return new Amount(value, Measure.DENSITY);
    }
}
