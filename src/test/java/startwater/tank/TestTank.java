package startwater.tank;

import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.fish.Species;
import startwater.water.Dose;

/**
 * A system for tests of behaviour, run by the production stepper hour by hour. What is not set is a nursery: 2,400 L,
 * 32 m2 of media, air that moves 2 per hour, 32 % protein, room air at 600 ppm.
 */
final class TestTank {
    static final double VOLUME_L = 2400;
    private static final int MEALS = 3;
    /** Fish that nothing kills, for what the filter alone does. */
    static final double UNHARMED = 1e6;

    final TankParameters parameters;
    final double[] y;
    final Stepper stepper;
    Controls controls;
    double ration;
    double day;
    double bicarbonateG;
    private double alkalinityKept;
    private double ammoniaMgPerLDay;

    /** A cubic metre of Nile tilapia, 32 % protein. @param sensitivity of each stratum, multiples of the usual threshold */
    static TankParameters cubicMetre(double... sensitivity) {
        return new TankParameters(
                Species.byId("nile-tilapia"),
                1000,
                10,
                1,
                1,
                1,
                2,
                0.1,
                0.4,
                600e-6,
                0,
                0.32,
                25,
                2,
                Sensitivity.of(sensitivity));
    }

    private TestTank(TankParameters parameters, double[] y, Controls controls, Stepper stepper) {
        this.parameters = parameters;
        this.y = y;
        this.controls = controls;
        this.stepper = stepper;
    }

    /** What a test may want otherwise. */
    static final class Plan {
        private @Nullable Species species;
        private double volumeL = VOLUME_L;
        private double mediaM2 = 32;
        private double aobSeed = 5e-4;
        private double nobSeed = 2e-4;
        private double aobGrowth = 1;
        private double nobGrowth = 1;
        private double excretion = 1;
        private double airPerHour = 2;
        private double carbonDioxideRatio = 0.4;
        private double protein = 0.32;
        private double sensitivity = 1;
        private double temperatureC = 27;
        private double ph = 7.6;
        private double alkalinity = 120;
        private double tan;
        private double nitrate = 1;
        private double chloride = 200;
        private FilterMedia kind = FilterMedia.MOVING_BED;
        private double plantsMgPerDay;

        Plan species(String id) {
            species = Species.byId(id);
            return this;
        }

        Plan volume(double litres) {
            volumeL = litres;
            return this;
        }

        Plan media(double squareMetres) {
            mediaM2 = squareMetres;
            return this;
        }

        Plan media(FilterMedia which) {
            kind = which;
            return this;
        }

        Plan plants(double mgPerDay) {
            plantsMgPerDay = mgPerDay;
            return this;
        }

        Plan seeds(double aob, double nob) {
            aobSeed = aob;
            nobSeed = nob;
            return this;
        }

        Plan growth(double aob, double nob) {
            aobGrowth = aob;
            nobGrowth = nob;
            return this;
        }

        Plan excretion(double factor) {
            excretion = factor;
            return this;
        }

        Plan air(double perHour, double ratio) {
            airPerHour = perHour;
            carbonDioxideRatio = ratio;
            return this;
        }

        Plan protein(double fraction) {
            protein = fraction;
            return this;
        }

        Plan sensitivity(double factor) {
            sensitivity = factor;
            return this;
        }

        Plan temperature(double celsius) {
            temperatureC = celsius;
            return this;
        }

        Plan water(double waterPh, double alkalinityMgPerL, double tanMgPerL, double chlorideMgPerL) {
            ph = waterPh;
            alkalinity = alkalinityMgPerL;
            tan = tanMgPerL;
            chloride = chlorideMgPerL;
            return this;
        }

        Plan nitrate(double mgPerL) {
            nitrate = mgPerL;
            return this;
        }

        SourceWater source() {
            return SourceWater.read(temperatureC, ph, alkalinity, tan, nitrate, chloride, 0, 0);
        }

        TestTank fill() {
            TankParameters p = new TankParameters(
                    species,
                    volumeL,
                    mediaM2,
                    aobGrowth,
                    nobGrowth,
                    excretion,
                    airPerHour,
                    0.1,
                    carbonDioxideRatio,
                    600e-6,
                    0,
                    protein,
                    species == null ? 1 : species.chlorideHalfMgPerL(),
                    2,
                    Sensitivity.of(sensitivity),
                    kind,
                    plantsMgPerDay);
            double[] y = TankStart.filled(p, source(), Math.min(1, aobSeed), Math.min(1, nobSeed));
            return new TestTank(p, y, Controls.running(temperatureC), new FastStepper());
        }

        /** Filled and stocked. @param kgPerM3 biomass, @param massG mean body mass */
        TestTank stock(double kgPerM3, double massG) {
            TestTank tank = fill();
            TankStart.stock(tank.y, tank.parameters, kgPerM3 * volumeL / massG, massG);
            return tank;
        }
    }

    static Plan plan() {
        return new Plan();
    }

    /** Feeds a share of the table ration in three meals a day. */
    TestTank fed(double share) {
        ration = share;
        return this;
    }

    /** Doses ammonium chloride in three doses a day. */
    TestTank dosed(double mgPerLDay) {
        ammoniaMgPerLDay = mgPerLDay;
        return this;
    }

    /** Tops alkalinity up with bicarbonate once a day, mg/L. */
    TestTank alkalinityKept(double mgPerL) {
        alkalinityKept = mgPerL;
        return this;
    }

    TestTank run(double days) {
        return run(days, t -> {});
    }

    /** Runs whole hours on and shows the day after each. */
    TestTank run(double days, DoubleConsumer each) {
        long hours = StrictMath.round(days * 24);
        for (long h = 0; h < hours; h++) {
            long hour = StrictMath.round(day * 24);
            if (hour % (24 / MEALS) == 0) {
                meal();
            }
            if (hour % 24 == 0) {
                topUp();
            }
            stepper.advance(y, parameters, controls, 1.0 / 24);
            day = (hour + 1) / 24.0;
            each.accept(day);
        }
        return this;
    }

    private void meal() {
        if (ration > 0) {
            event(new TankEvent.Meal(ration, 1.0 / MEALS, Double.NaN));
        }
        if (ammoniaMgPerLDay > 0) {
            ammonia(ammoniaMgPerLDay / MEALS);
        }
    }

    private void topUp() {
        double lack = alkalinityKept - TankReadings.alkalinityMgPerL(y);
        if (lack > 0) {
            bicarbonateG += dose(Dose.SODIUM_BICARBONATE, lack);
        }
    }

    /** Doses for so many mg/L of alkalinity as CaCO3. @return g */
    double dose(Dose compound, double alkalinityMgPerL) {
        double grams =
                alkalinityMgPerL / SourceWater.MG_CACO3_PER_MEQ / compound.alkalinityMeqPerG() * parameters.volumeL();
        event(new TankEvent.Dosing(compound, grams));
        return grams;
    }

    /** Doses ammonium chloride for so many mg N/L. */
    void ammonia(double mgPerL) {
        event(new TankEvent.Dosing(
                Dose.AMMONIUM_CHLORIDE, mgPerL * parameters.volumeL() / Dose.AMMONIUM_CHLORIDE.tanMgPerG()));
    }

    void event(TankEvent event) {
        event.apply(y, parameters);
    }

    /** By the minute, for what happens fast. */
    void minute() {
        stepper.advance(y, parameters, controls, 1.0 / 1440);
        day += 1.0 / 1440;
    }

    double tan() {
        return y[TankLayout.TAN];
    }

    double nitrite() {
        return y[TankLayout.NITRITE];
    }

    double nitrate() {
        return y[TankLayout.NITRATE];
    }

    double oxygen() {
        return y[TankLayout.OXYGEN];
    }

    double ph() {
        return TankReadings.ph(y);
    }

    double toxicAmmonia() {
        return TankReadings.toxicAmmoniaMgPerL(y);
    }

    double alkalinity() {
        return TankReadings.alkalinityMgPerL(y);
    }

    double survival() {
        return TankReadings.survivalOf(y, 0);
    }

    double feedKg() {
        return y[TankLayout.FED] / (parameters.proteinFraction() * Meals.NITROGEN_PER_PROTEIN) / 1e6;
    }

    /** How far nitrogen has drifted from what the ledgers say, relative to what went through. */
    double nitrogenDrift(double before) {
        double scale = TankReadings.nitrogenMg(y, parameters.volumeL())
                + y[TankLayout.FED]
                + y[TankLayout.DOSED]
                + y[TankLayout.EXCHANGED_OUT];
        return StrictMath.abs(unledgeredNitrogen() - before) / scale;
    }

    double unledgeredNitrogen() {
        return TankReadings.nitrogenMg(y, parameters.volumeL()) - TankReadings.ledgerMg(y);
    }
}
