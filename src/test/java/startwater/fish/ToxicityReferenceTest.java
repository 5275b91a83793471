package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.water.UnionisedAmmonia;

/** What kills how many, against published toxicity tests. */
@Tag("outside")
class ToxicityReferenceTest {
    private static final double ION_PER_N = 3.2845;

    @Test
    void lethalConcentrationsLieInsideThePublishedSpread() {
        ReferenceTable table = ReferenceTable.read("fish/lc50.csv");
        for (ReferenceTable.Row row : table.rows()) {
            Species species = Species.byId(row.text("species"));
            Stressor stressor = Stressor.valueOf(row.text("stressor"));
            double scale =
                    switch (stressor) {
                        case AMMONIA -> species.ammoniaThresholdFactor(row.number("mass_g"));
                        case NITRITE -> 1 + row.number("chloride_mg_per_l") / species.chlorideHalfMgPerL();
                        default -> 1;
                    };
            double days = row.number("hours") / 24;
            double computed = stressor == Stressor.NITRITE
                    ? scale * species.curve(stressor).lc50(days)
                    : scaled(species.curve(stressor), scale).lc50(days);
            table.checkBetween(
                    String.join(
                            " ",
                            row.text("species"),
                            row.text("stressor"),
                            row.text("mass_g") + " g,",
                            "chloride " + row.text("chloride_mg_per_l") + ",",
                            row.text("hours") + " h"),
                    row.number("low"),
                    row.number("high"),
                    computed);
        }
    }

    private static SurvivalCurve scaled(SurvivalCurve c, double scale) {
        return new SurvivalCurve(
                c.killRatePerDay(),
                c.threshold() * scale,
                c.slopePerDay(),
                c.lowThreshold() * scale,
                c.lowSlopePerDay());
    }

    @Test
    void ammoniaKillsWithinTwoDaysOrHardlyAtAll() {
        ReferenceTable table = ReferenceTable.read("fish/lc50-in-time.csv");
        for (ReferenceTable.Row row : table.rows()) {
            SurvivalCurve curve = Species.byId(row.text("species")).curve(Stressor.AMMONIA);
            double ratio = curve.lc50(row.number("hours") / 24) / curve.lc50(row.number("reference_hours") / 24);
            table.check(
                    row.text("species") + " " + row.text("hours") + " h, published " + row.text("ratio"),
                    row.number("ratio"),
                    ratio);
        }
    }

    /** One dose, corrected for the ammonium that counts at low pH, explains a 58-fold fall of the total. */
    @Test
    void totalAmmoniaThatKillsCatfishFallsWithPh() {
        ReferenceTable table = ReferenceTable.read("fish/catfish-tan-lc50.csv");
        double toxic = Species.byId("channel-catfish").curve(Stressor.AMMONIA).lc50(1);
        for (ReferenceTable.Row row : table.rows()) {
            double ph = row.number("ph");
            double fraction = UnionisedAmmonia.fraction(ph, row.number("temperature_c"));
            double tan = toxic * Species.ammoniumFactor(StrictMath.pow(10, -ph)) / fraction;
            table.check("pH " + row.text("ph"), row.number("tan_mg_per_l"), tan);
            assertThat(row.number("tan_mg_per_l") * fraction).isBetween(1.1, 2.1);
        }
    }

    @Test
    void twiceTheChlorideRaisesWhatTilapiaBearAsPublished() {
        ReferenceTable table = ReferenceTable.read("fish/chloride.csv");
        double half = Species.byId("nile-tilapia").chlorideHalfMgPerL();
        table.check(
                "LC50 at chloride 70 over 35", table.rows().get(0).number("value"), (1 + 70 / half) / (1 + 35 / half));
    }

    @Test
    void boundBloodLiesBetweenThePublishedSeries() {
        ReferenceTable table = ReferenceTable.read("fish/methaemoglobin.csv");
        for (ReferenceTable.Row row : table.rows()) {
            Species species = Species.byId(row.text("species"));
            double exposure = row.number("nitrite_ion_mg_per_l")
                    / ION_PER_N
                    / (1 + row.number("chloride_mg_per_l") / species.chlorideHalfMgPerL());
            double rate = species.curve(Stressor.NITRITE).killRatePerDay();
            double damage = -exposure
                    * StrictMath.expm1(-rate * row.number("hours_in") / 24)
                    * StrictMath.exp(-rate * row.number("hours_clean") / 24);
            table.checkBetween(
                    String.join(
                            " ",
                            row.text("species"),
                            "nitrite " + row.text("nitrite_ion_mg_per_l") + ",",
                            "chloride " + row.text("chloride_mg_per_l") + ",",
                            row.text("hours_in") + " h in and " + row.text("hours_clean") + " h out"),
                    row.number("low"),
                    row.number("high"),
                    100 * species.methaemoglobin(damage));
        }
    }

    @Test
    void chlorideLeavesTheBloodOfPoisonedCatfishClean() {
        Species catfish = Species.byId("channel-catfish");
        double rate = catfish.curve(Stressor.NITRITE).killRatePerDay();
        double poisoned = -5 / ION_PER_N * StrictMath.expm1(-rate * 5 / 24);
        double salted = 5 / ION_PER_N / (1 + 250 * 0.6066 / catfish.chlorideHalfMgPerL());
        // Tomasso et al. 1979: 5 h at 5 mg/L bind 42.5 %; then 250 mg/L of salt: normal within 24 h.
        assertThat(catfish.methaemoglobin(poisoned)).isBetween(0.4, 0.65);
        assertThat(catfish.methaemoglobin(salted + (poisoned - salted) * StrictMath.exp(-rate)))
                .isLessThan(0.07);
    }

    @Test
    void heatAndColdKillAsPublished() {
        ReferenceTable table = ReferenceTable.read("fish/temperature.csv");
        for (ReferenceTable.Row row : table.rows()) {
            Species species = Species.byId(row.text("species"));
            double t = row.number("temperature_c");
            double outside = StrictMath.max(0, StrictMath.max(species.coldLimitC() - t, t - species.warmLimitC()));
            double survival =
                    StrictMath.exp(-species.curve(Stressor.TEMPERATURE).cumulativeHazard(outside, row.number("days")));
            table.checkBetween(
                    row.text("species") + " " + row.text("temperature_c") + " °C for " + row.text("days") + " d",
                    row.number("low"),
                    row.number("high"),
                    survival);
        }
    }

    @Test
    void appetiteOfTilapiaFallsAlongThePublishedLine() {
        ReferenceTable table = ReferenceTable.read("fish/appetite-tilapia.csv");
        Appetite appetite = Species.byId("nile-tilapia").appetite();
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    row.text("ammonia_mg_per_l") + " mg N/L",
                    row.number("loss"),
                    1 - appetite.of(row.number("ammonia_mg_per_l"), 6, 0, 28));
        }
    }

    @Test
    void fishBreatheAsPublished() {
        ReferenceTable table = ReferenceTable.read("fish/respiration.csv");
        // Fed fish over a day breathe half as much again as fasting ones.
        double fed = 1.5;
        double factor = 2;
        for (ReferenceTable.Row row : table.rows()) {
            double published = row.number("mg_per_kg_hour");
            double computed = fed
                    * Species.byId(row.text("species"))
                            .respiration()
                            .mgPerKgHour(row.number("mass_g"), row.number("temperature_c"));
            table.checkBetween(
                    row.text("species") + " " + row.text("mass_g") + " g at " + row.text("temperature_c") + " °C",
                    published / factor,
                    published * factor,
                    computed);
        }
    }
}
