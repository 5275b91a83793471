package startwater.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import startwater.drill.TankSim;
import startwater.fish.Stressor;
import startwater.score.WhyText;
import startwater.tank.TankFlows;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;
import startwater.text.Texts;

/**
 * One column of {@code run --csv}.
 *
 * @param name its heading, with the unit
 * @param unit its unit; "1" for a share or a number
 * @param meaning key of its meaning in the language files
 * @param stressor the stressor it is of, or null
 * @param state its place in the state, see {@link TankLayout}, or -1 where it follows from the state
 * @param value reads it
 */
record HourColumn(
        String name,
        String unit,
        String meaning,
        @Nullable Stressor stressor,
        int state,
        ToDoubleFunction<Moment> value) {
    private static final int NO_STATE = -1;
    private static final double PERCENT = 100;

    /** All, in the order of the file. */
    static final List<HourColumn> ALL = all();

    /**
     * The end of an hour.
     *
     * @param flows mean flows of the hour, by {@link HourFlow}
     * @param hazards mean hazards of the hour by stressor, 1/h
     * @param now flows at its very end
     */
    record Moment(long seed, TankSim tank, double[] flows, double[] hazards, TankFlows now) {
        static Moment of(long seed, TankSim tank, double[] flows, double[] hazards) {
            TankFlows now = TankFlows.of(tank.state(), tank.draw().parameters(), tank.controls());
            return new Moment(seed, tank, flows, hazards, now);
        }

        double[] y() {
            return tank.state();
        }

        TankParameters parameters() {
            return tank.draw().parameters();
        }
    }

    static double[] row(Moment moment) {
        return ALL.stream().mapToDouble(c -> c.value.applyAsDouble(moment)).toArray();
    }

    /** What it means, in the reader's language. */
    String meaning(Texts texts) {
        return stressor == null
                ? texts.text(meaning)
                : texts.text(meaning, WhyText.in(texts.language().locale()).cause(stressor));
    }

    private static List<HourColumn> all() {
        List<HourColumn> all = new ArrayList<>();
        all.add(derived("seed", "1", m -> m.seed()));
        all.add(derived("day_d", "d", m -> m.tank().day()));
        states(all);
        derived(all);
        for (HourFlow flow : HourFlow.values()) {
            String name = flow.name().toLowerCase(Locale.ROOT);
            all.add(new HourColumn(
                    name + "_" + inName(flow.unit()), flow.unit(), "csv." + name, null, NO_STATE, m -> m.flows()[
                            flow.ordinal()]));
        }
        for (Stressor s : Stressor.values()) {
            all.add(of(s, "hazard", "_per_h", "1/h", NO_STATE, m -> m.hazards()[s.ordinal()]));
        }
        return List.copyOf(all);
    }

    private static void states(List<HourColumn> all) {
        all.add(state("ammonia", "mg N/L", TankLayout.TAN));
        all.add(state("nitrite", "mg N/L", TankLayout.NITRITE));
        all.add(state("nitrate", "mg N/L", TankLayout.NITRATE));
        all.add(state("alkalinity", "meq/L", TankLayout.ALKALINITY));
        all.add(state("dissolved_carbon", "mmol/L", TankLayout.DIC));
        all.add(state("oxygen", "mg/L", TankLayout.OXYGEN));
        all.add(state("chloride", "mg/L", TankLayout.CHLORIDE));
        all.add(state("free_chlorine", "mg Cl2/L", TankLayout.FREE_CHLORINE));
        all.add(state("combined_chlorine", "mg Cl2/L", TankLayout.COMBINED_CHLORINE));
        all.add(state("temperature", "°C", TankLayout.TEMPERATURE));
        all.add(state("ammonia_oxidisers", "mg N/d", TankLayout.AOB));
        all.add(state("nitrite_oxidisers", "mg N/d", TankLayout.NOB));
        all.add(state("organic_nitrogen", "mg N/L", TankLayout.ORGANIC_N));
        all.add(state("gut_1", "mg N", TankLayout.GUT_1));
        all.add(state("gut_2", "mg N", TankLayout.GUT_2));
        all.add(state("body_nitrogen", "mg N", TankLayout.FISH_N));
        all.add(state("stocked", "fish", TankLayout.STOCKED));
        all.add(state("hydrogen_ion", "mol/L", TankLayout.H_ION));
        for (Stressor s : Stressor.values()) {
            int at = TankLayout.DAMAGE + s.ordinal();
            all.add(of(s, "damage", "_" + inName(unit(s)), unit(s), at, m -> m.y()[at]));
        }
        all.add(state("stress", "d", TankLayout.STRESS));
        all.add(state("filter_delay", "d", TankLayout.DELAY));
        all.add(state("fed", "mg N", TankLayout.FED));
        all.add(state("dosed", "mg N", TankLayout.DOSED));
        all.add(state("brought_in", "mg N", TankLayout.BROUGHT_IN));
        all.add(state("exchanged_out", "mg N", TankLayout.EXCHANGED_OUT));
        all.add(state("removed", "mg N", TankLayout.REMOVED));
        all.add(state("growth_lost", "d", TankLayout.GROWTH_LOST));
        all.add(state("wasted", "d", TankLayout.WASTED));
        all.add(state("uneaten", "g", TankLayout.UNEATEN_G));
        all.add(state("water_changed", "volumes", TankLayout.VOLUMES));
        all.add(state("shock", "share", TankLayout.SHOCK));
        all.add(state("stagnant", "h", TankLayout.STAGNANT_HOURS));
        all.add(state("held_nitrogen", "mg N", TankLayout.HELD_N));
        all.add(state("loose_nitrogen", "mg N", TankLayout.LOOSE_N));
        all.add(state("taken_up", "mg N", TankLayout.TAKEN_UP));
        all.add(state("medication", "1/d", TankLayout.MEDICATION));
        all.add(state("acclimated", "°C", TankLayout.ACCLIMATED_C));
        all.add(state("survivors", "share", TankLayout.survivors(0)));
        for (Stressor s : Stressor.values()) {
            int at = TankLayout.hazard(0, s);
            all.add(of(s, "cumulative_hazard", "", "1", at, m -> m.y()[at]));
        }
    }

    private static void derived(List<HourColumn> all) {
        all.add(derived("ph", "1", m -> TankReadings.ph(m.y())));
        all.add(derived("alkalinity_mg_CaCO3_per_L", "mg CaCO3/L", m -> TankReadings.alkalinityMgPerL(m.y())));
        all.add(derived("toxic_ammonia_mg_N_per_L", "mg N/L", m -> TankReadings.toxicAmmoniaMgPerL(m.y())));
        all.add(derived("carbon_dioxide_mg_per_L", "mg/L", m -> TankReadings.carbonDioxideMgPerL(m.y())));
        all.add(derived("oxygen_saturation_mg_per_L", "mg/L", HourColumn::saturation));
        all.add(derived("oxygen_saturation_percent", "%", m -> PERCENT * m.y()[TankLayout.OXYGEN] / saturation(m)));
        all.add(derived(
                "methaemoglobin_percent",
                "%",
                m -> PERCENT * TankReadings.methaemoglobin(m.y(), m.parameters().species())));
        all.add(derived(
                "effective_nitrite_mg_N_per_L",
                "mg N/L",
                m -> TankReadings.effectiveNitriteMgPerL(m.y(), m.parameters().chlorideHalfMgPerL())));
        all.add(derived(
                "expected_alive_fish",
                "fish",
                m -> m.y()[TankLayout.STOCKED] * m.tank().survival(0)));
        all.add(derived(
                "body_mass_g",
                "g",
                m -> TankReadings.massG(m.y(), m.parameters().strata())));
        all.add(derived(
                "biomass_g",
                "g",
                m -> TankReadings.biomassG(m.y(), m.parameters().strata())));
        all.add(derived("appetite_share", "share", m -> TankReadings.appetite(m.y(), m.parameters())));
        all.add(derived("feed_order_share", "share", m -> m.tank().feed()));
        all.add(derived("air_on", "0/1", m -> m.tank().controls().air() ? 1 : 0));
        all.add(derived("pump_on", "0/1", m -> m.tank().controls().pump() ? 1 : 0));
        all.add(derived("heater_on", "0/1", m -> m.tank().heater() ? 1 : 0));
        all.add(derived("filter_flow_share", "share", m -> m.tank().flowShare()));
        for (Stressor s : Stressor.values()) {
            all.add(of(s, "exposure", "_" + inName(unit(s)), unit(s), NO_STATE, m -> m.now()
                    .exposure()[s.ordinal()]));
        }
    }

    private static double saturation(Moment m) {
        return TankFlows.oxygenSaturationMgPerL(m.y(), m.parameters(), m.tank().controls());
    }

    private static HourColumn state(String name, String unit, int at) {
        return new HourColumn(name + "_" + inName(unit), unit, "csv." + name, null, at, m -> m.y()[at]);
    }

    private static HourColumn derived(String name, String unit, ToDoubleFunction<Moment> value) {
        return new HourColumn(name, unit, "csv." + name, null, NO_STATE, value);
    }

    private static HourColumn of(
            Stressor s, String what, String ending, String unit, int at, ToDoubleFunction<Moment> value) {
        String name = what + "_" + s.name().toLowerCase(Locale.ROOT) + ending;
        return new HourColumn(name, unit, "csv." + what, s, at, value);
    }

    private static String unit(Stressor s) {
        return switch (s) {
            case AMMONIA, NITRITE -> "mg N/L";
            case LOW_OXYGEN -> "mg/L";
            case CHLORINE -> "mg Cl2/L";
            case PH -> "pH";
            case TEMPERATURE -> "°C";
        };
    }

    /** A unit as it stands in a heading: letters, digits and lower lines. */
    private static String inName(String unit) {
        return unit.replace("/", "_per_").replace("°", "").replace(' ', '_');
    }

    /** The headings in one line. */
    static String heading() {
        return String.join(",", ALL.stream().map(HourColumn::name).toList());
    }

    /** A row with values that read back to the same bits. */
    static String line(double[] row) {
        return String.join(
                ",", Arrays.stream(row).mapToObj(HourColumn::shortest).toList());
    }

    private static String shortest(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
