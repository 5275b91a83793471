package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.biofilter.FilterMedia;
import startwater.fish.Stressor;

/** Flows of a moment add up to what the state changes by over the minutes around it. */
class TankFlowsTest {
    private static final double HOURS = 0.002;

    /** A sponge with solids, plants, and tilapia that digest and are short of oxygen; with the pump or fouling without. */
    private static TestTank busy(boolean pump) {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .media(FilterMedia.SPONGE)
                .plants(4000)
                .volume(2000)
                .seeds(0.4, 0.3)
                .water(7.9, 150, 3, 60)
                .stock(6, 20);
        double[] y = tank.y;
        y[NITRITE] = 4;
        y[NITRATE] = 6;
        y[ORGANIC_N] = 1.5;
        y[HELD_N] = 3000;
        y[GUT_1] = 2000;
        y[GUT_2] = 1500;
        y[OXYGEN] = 2;
        y[COMBINED_CHLORINE] = 0;
        y[DAMAGE + Stressor.NITRITE.ordinal()] = 9;
        y[DAMAGE + Stressor.LOW_OXYGEN.ordinal()] = 0.4;
        y[STAGNANT_HOURS] = 9;
        tank.controls = tank.controls.withPump(pump);
        return tank;
    }

    /** Close to the rate of change at the middle of a span, per hour. */
    private record Change(double[] before, double[] after, TankFlows flows, double volumeL) {
        static Change of(TestTank tank) {
            Stepper referee = new ReferenceStepper(1e-12, 1e-12);
            // The first flush and the start of fouling lie before the span.
            referee.advance(tank.y, tank.parameters, tank.controls, 1e-6);
            double[] before = tank.y.clone();
            referee.advance(tank.y, tank.parameters, tank.controls, HOURS / 48);
            TankFlows flows = TankFlows.of(tank.y, tank.parameters, tank.controls);
            referee.advance(tank.y, tank.parameters, tank.controls, HOURS / 48);
            return new Change(before, tank.y, flows, tank.parameters.volumeL());
        }

        double of(int at) {
            return (after[at] - before[at]) / HOURS;
        }

        double inWater(int at) {
            return of(at) * volumeL;
        }

        void is(String what, double flow, double change) {
            assertThat(flow).as(what).isCloseTo(change, within(1e-4 * Math.abs(change) + 1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void nitrogenMovesByTheFlows(boolean pump) {
        TestTank tank = busy(pump);
        double share = pump ? 1 : 0.02;
        Change c = Change.of(tank);
        TankFlows f = c.flows;
        double leaving = c.of(GUT_1) + c.of(GUT_2) + c.of(FISH_N) + c.of(REMOVED);
        c.is("excretion", f.excretedMgN(), -leaving);
        c.is("mineralising and trapping", f.mineralisedMgN() + f.trappedMgN(), -c.inWater(ORGANIC_N));
        // A clean sponge catches 0.8 a day; 3,000 mg N on 32 m2 are 93.75 mg/m2, where 150 halve the flow.
        double load = 3000 / 32.0 / 150;
        assertThat(f.trappedMgN())
                .isCloseTo(0.8 / (1 + load * load) * share * 1.5 * 2000 / 24, within(0.02 * f.trappedMgN()));
        c.is("held solids", f.trappedMgN() - f.heldMineralisedMgN() - f.loosenedMgN(), c.of(HELD_N));
        c.is("let go", f.loosenedMgN(), c.of(LOOSE_N));
        c.is("plants", f.takenUpMgN(), c.of(TAKEN_UP));
        c.is("nitrite", f.ammoniaOxidisedMgN() - f.nitriteOxidisedMgN(), c.inWater(NITRITE));
        c.is("nitrate", f.nitriteOxidisedMgN() - f.takenUpMgN(), c.inWater(NITRATE));
        double made = f.excretedMgN() + f.mineralisedMgN() + f.heldMineralisedMgN();
        c.is("ammonia", made - f.ammoniaOxidisedMgN(), c.inWater(TAN));
        assertThat(f.loosenedMgN() > 0).isEqualTo(!pump);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void gasesMoveByTheFlows(boolean pump) {
        TestTank tank = busy(pump);
        Change c = Change.of(tank);
        c.is("oxygen", c.flows.oxygenFromAirMg() - c.flows.oxygenUsedMg(), c.inWater(OXYGEN));
        c.is("carbon", c.flows.carbonFromAirMmol() + c.flows.carbonMadeMmol(), c.inWater(DIC));
        // 2.1 per hour at 20 °C, theta 1.024, over a deficit of the saturation less what is there.
        double deficit = TankFlows.oxygenSaturationMgPerL(tank.y, tank.parameters, tank.controls) - 2;
        assertThat(c.flows.oxygenFromAirMg())
                .isCloseTo(2.1 * StrictMath.pow(1.024, 7) * deficit * 2000, within(0.02 * 4200 * deficit));
        assertThat(c.flows.carbonMadeMmol()).isPositive();
    }

    @Test
    void hazardsOfAMomentAddUpToDeaths() {
        Change c = Change.of(busy(true));
        double[] hazards = c.flows.hazardPerHour();
        for (Stressor cause : Stressor.values()) {
            c.is(cause.name(), hazards[cause.ordinal()], c.of(hazard(0, cause)));
        }
        assertThat(hazards[Stressor.NITRITE.ordinal()]).isPositive();
    }

    /** 4 mg/L counted against 60 mg/L of chloride, of which 25 halve it. */
    @Test
    void exposureIsWhatTheFishMeet() {
        TestTank tank = busy(true);
        double[] exposure = TankFlows.of(tank.y, tank.parameters, tank.controls).exposure();
        assertThat(exposure[Stressor.NITRITE.ordinal()]).isCloseTo(4 / (1 + 60 / 25.0), within(1e-9));
    }

    @Test
    void withoutFishThereIsNoHazardAndNothingIsExcreted() {
        TestTank tank = busy(true);
        tank.y[STOCKED] = 0;
        TankFlows flows = TankFlows.of(tank.y, tank.parameters, tank.controls);
        assertThat(flows.hazardPerHour()).containsOnly(0);
        assertThat(flows.excretedMgN()).isZero();
        TestTank bare = TestTank.plan().fill();
        assertThat(TankFlows.of(bare.y, bare.parameters, bare.controls).hazardPerHour())
                .containsOnly(0);
    }

    @Test
    void whoeverReadsAnArrayHasACopy() {
        TestTank tank = busy(true);
        TankFlows flows = TankFlows.of(tank.y, tank.parameters, tank.controls);
        double[] exposure = flows.exposure();
        double[] hazards = flows.hazardPerHour();
        flows.exposure()[1] = -1;
        flows.hazardPerHour()[1] = -1;
        assertThat(flows.exposure()).isEqualTo(exposure);
        assertThat(flows.hazardPerHour()).isEqualTo(hazards);
    }

    /** With 35 % protein a gram of feed holds 56 mg N. */
    @Test
    void nitrogenToldAsFeed() {
        TankParameters p = TestTank.plan().protein(0.35).fill().parameters;
        assertThat(TankFlows.feedG(112, p)).isCloseTo(2, within(1e-12));
        TankParameters without = TestTank.plan().protein(0).fill().parameters;
        assertThat(TankFlows.feedG(0, without)).isZero();
    }
}
