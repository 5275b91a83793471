package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.quantity.Molar;
import startwater.score.Policies;
import startwater.score.PolicyPlayer;
import startwater.score.StandIn;
import startwater.tank.TankLayout;
import startwater.text.Language;
import startwater.water.Chlorine;

/** The hourly file: all states are there, flows close against them, and every value reads back to the same bits. */
class HourTableTest {
    private static final Path DOCUMENT = Path.of("src/docs/run-csv.md");
    private static final String WRITE = "startwater.write.docs";
    /** A flow may miss what the state changed by this share of all that flowed in the hour, ... */
    private static final double SHARE = 0.01;
    /** ... beside this much per litre of water: mg N, mg O2, mmol C, meq. */
    private static final double BESIDE = 0.002;
    /** Oxygen goes in and out by some 20 mg/L an hour, of which the flow is the small difference. */
    private static final double BESIDE_OF_OXYGEN = 0.01;

    private static final List<Played> RUNS = new ArrayList<>();

    private record Played(DrillRun run, List<double[]> rows) {
        double volumeL() {
            return run.hidden().draw().parameters().volumeL();
        }
    }

    @BeforeAll
    static void play() {
        for (String drill : List.of("hungry-second-week", "first-strips")) {
            Scenario scenario = Library.shipped().scenario(drill).get();
            for (String policy : List.of("careful", "half-every-day", "do-nothing")) {
                for (long seed = 1; seed <= 2; seed++) {
                    HourTable table = new HourTable(seed, Calendar.of(scenario).first());
                    DrillRun run =
                            PolicyPlayer.play(scenario, Policies.byId(policy), seed, DrillRun.Pace.EVERY_VISIT, table);
                    RUNS.add(new Played(run, table.rows()));
                }
            }
        }
        playWhatIsRare();
    }

    private static void playWhatIsRare() {
        Scenario s = rare();
        for (long seed = 1; seed <= 2; seed++) {
            HourTable table = new HourTable(seed, Calendar.of(s).first());
            DrillRun run = DrillRun.start(s, seed, DrillRun.Pace.EVERY_VISIT, StandIn.BY_THE_RULES, table);
            while (!run.over()) {
                boolean clogged = run.now().seen().flowPercent() < 80;
                run.decide(
                        Decision.LEAVE_ALONE
                                .withFeed(0.5)
                                .withFilter(clogged ? Decision.FilterCare.RINSE : Decision.FilterCare.LEAVE),
                        null);
            }
            RUNS.add(new Played(run, table.rows()));
        }
    }

    /** A sponge that clogs and stands, a plant bed, slow exchange and top-up, a cold room. */
    private static Scenario rare() {
        Scenario s = Library.shipped().scenario("hungry-second-week").get();
        Scenario.Water w = s.system();
        Scenario.Water rare = new Scenario.Water(
                w.volumeL(),
                "sponge",
                w.mediaAreaM2() / 2,
                w.airKlaPerHour(),
                w.surfaceKlaPerHour(),
                w.carbonDioxideRatio(),
                w.roomCarbonDioxidePpm(),
                w.altitudeM(),
                w.setPointC(),
                w.temperatureRatePerDay(),
                20.0,
                0.05,
                20,
                1500);
        return s.change()
                .system(rare)
                .events(List.of(
                        new Scenario.Happening(9.4, Scenario.Happening.Kind.PUMP_OFF, 6, 0),
                        new Scenario.Happening(11.8, Scenario.Happening.Kind.POWER_OFF, 5, 0)))
                .made();
    }

    private static double at(double[] row, String column) {
        for (int i = 0; i < row.length; i++) {
            if (HourColumn.ALL.get(i).name().equals(column)) {
                return row[i];
            }
        }
        throw new AssertionError("no column " + column);
    }

    private static double state(double[] row, int state) {
        for (int i = 0; i < row.length; i++) {
            if (HourColumn.ALL.get(i).state() == state) {
                return row[i];
            }
        }
        throw new AssertionError("no column for state " + state);
    }

    @Test
    void everyStateOfTheTankHasItsColumn() {
        assertThat(HourColumn.ALL.stream().map(HourColumn::state).filter(s -> s >= 0))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, TankLayout.length(1)).boxed().toList());
        assertThat(HourColumn.ALL.stream().map(HourColumn::name)).doesNotHaveDuplicates();
    }

    @Test
    void thereIsOneRowForEveryHourFromTheFirstVisitToTheEnd() {
        for (Played played : RUNS) {
            List<double[]> rows = played.rows();
            int hours = (played.run().calendar().end() - played.run().calendar().first()) / 60;
            assertThat(rows).hasSize(hours + 1);
            for (int i = 1; i < rows.size(); i++) {
                assertThat(at(rows.get(i), "day_d") - at(rows.get(i - 1), "day_d"))
                        .isCloseTo(1 / 24.0, within(1e-9));
            }
        }
    }

    @Test
    void lookingOnChangesNothing() {
        for (Played played : RUNS.subList(0, 2)) {
            DrillRun alone = PolicyPlayer.play(
                    played.run().scenario(), Policies.CAREFUL, played.run().variant(), DrillRun.Pace.EVERY_VISIT);
            assertThat(alone.hidden().state())
                    .containsExactly(played.run().hidden().state());
        }
    }

    /** What a state gains per hour by the flows, in its amount; and all that flowed, regardless of direction. */
    private record Gain(double net, double gross) {
        static Gain of(double... flows) {
            return new Gain(
                    Arrays.stream(flows).sum(),
                    Arrays.stream(flows).map(Math::abs).sum());
        }
    }

    private interface Budget {
        Gain of(double[] row);
    }

    private static void closes(String what, double beside, ToDoubleFunction<double[]> amountPerL, Budget budget) {
        double worst = 0;
        for (Played played : RUNS) {
            for (int i = 1; i < played.rows().size(); i++) {
                double[] row = played.rows().get(i);
                double change = (amountPerL.applyAsDouble(row)
                                - amountPerL.applyAsDouble(played.rows().get(i - 1)))
                        * played.volumeL();
                Gain gain = budget.of(row);
                double allowed = SHARE * gain.gross() + beside * played.volumeL();
                worst = Math.max(worst, Math.abs(change - gain.net()) / allowed);
            }
        }
        assertThat(worst)
                .as("%s: worst miss as a share of what is allowed", what)
                .isLessThan(1);
    }

    @Test
    void ammoniaCloses() {
        closes(
                "ammonia",
                BESIDE,
                r -> state(r, TankLayout.TAN)
                        + Chlorine.NITROGEN_MG_PER_MG_CHLORAMINE * state(r, TankLayout.COMBINED_CHLORINE),
                r -> Gain.of(
                        at(r, "excretion_mg_N_per_h"),
                        at(r, "mineralisation_mg_N_per_h"),
                        at(r, "held_mineralisation_mg_N_per_h"),
                        at(r, "flushed_ammonia_mg_N_per_h"),
                        -at(r, "ammonia_oxidation_mg_N_per_h"),
                        at(r, "dosed_ammonia_mg_N_per_h"),
                        at(r, "exchanged_ammonia_mg_N_per_h")));
    }

    @Test
    void nitriteAndNitrateClose() {
        closes(
                "nitrite",
                BESIDE,
                r -> state(r, TankLayout.NITRITE),
                r -> Gain.of(
                        at(r, "ammonia_oxidation_mg_N_per_h"),
                        -at(r, "nitrite_oxidation_mg_N_per_h"),
                        at(r, "exchanged_nitrite_mg_N_per_h")));
        closes(
                "nitrate",
                BESIDE,
                r -> state(r, TankLayout.NITRATE),
                r -> Gain.of(
                        at(r, "nitrite_oxidation_mg_N_per_h"),
                        -at(r, "plant_uptake_mg_N_per_h"),
                        at(r, "exchanged_nitrate_mg_N_per_h")));
    }

    @Test
    void solidsClose() {
        closes(
                "organic nitrogen",
                BESIDE,
                r -> state(r, TankLayout.ORGANIC_N),
                r -> Gain.of(
                        at(r, "solids_from_meals_mg_N_per_h"),
                        -at(r, "mineralisation_mg_N_per_h"),
                        -at(r, "solids_removed_mg_N_per_h"),
                        -at(r, "trapping_mg_N_per_h"),
                        at(r, "flushed_organic_mg_N_per_h"),
                        at(r, "exchanged_organic_mg_N_per_h")));
        for (Played played : RUNS) {
            for (int i = 1; i < played.rows().size(); i++) {
                double[] row = played.rows().get(i);
                double held =
                        state(row, TankLayout.HELD_N) - state(played.rows().get(i - 1), TankLayout.HELD_N);
                Gain gain = Gain.of(
                        at(row, "trapping_mg_N_per_h"),
                        -at(row, "held_mineralisation_mg_N_per_h"),
                        -at(row, "loosening_mg_N_per_h"),
                        -at(row, "held_removed_mg_N_per_h"));
                assertThat(held).isCloseTo(gain.net(), within(SHARE * gain.gross() + BESIDE * played.volumeL()));
            }
        }
        assertThat(RUNS.stream()
                        .flatMap(p -> p.rows().stream())
                        .mapToDouble(r -> at(r, "flushed_organic_mg_N_per_h"))
                        .max()
                        .orElse(0))
                .isPositive();
    }

    @Test
    void oxygenCloses() {
        closes(
                "oxygen",
                BESIDE_OF_OXYGEN,
                r -> state(r, TankLayout.OXYGEN),
                r -> Gain.of(
                        at(r, "oxygen_from_air_mg_per_h"),
                        -at(r, "oxygen_used_mg_per_h"),
                        at(r, "flushed_oxygen_mg_per_h"),
                        at(r, "exchanged_oxygen_mg_per_h")));
    }

    @Test
    void alkalinityAndCarbonClose() {
        closes(
                "alkalinity",
                BESIDE,
                r -> state(r, TankLayout.ALKALINITY),
                r -> Gain.of(
                        at(r, "excretion_mg_N_per_h") / Molar.N,
                        at(r, "mineralisation_mg_N_per_h") / Molar.N,
                        at(r, "held_mineralisation_mg_N_per_h") / Molar.N,
                        at(r, "flushed_ammonia_mg_N_per_h") / Molar.N,
                        at(r, "plant_uptake_mg_N_per_h") / Molar.N,
                        -2 * at(r, "ammonia_oxidation_mg_N_per_h") / Molar.N,
                        at(r, "dosed_alkalinity_meq_per_h"),
                        at(r, "exchanged_alkalinity_meq_per_h")));
        closes(
                "carbon",
                BESIDE,
                r -> state(r, TankLayout.DIC),
                r -> Gain.of(
                        at(r, "carbon_from_air_mmol_per_h"),
                        at(r, "carbon_made_mmol_per_h"),
                        at(r, "dosed_carbon_mmol_per_h"),
                        at(r, "exchanged_carbon_mmol_per_h")));
    }

    @Test
    void chlorideCloses() {
        closes(
                "chloride",
                BESIDE,
                r -> state(r, TankLayout.CHLORIDE),
                r -> Gain.of(at(r, "dosed_chloride_mg_per_h"), at(r, "exchanged_chloride_mg_per_h")));
    }

    /** Hazards add up to what the deaths are split by, to 2 % and 2e-5. */
    @Test
    void hazardsClose() {
        for (Played played : RUNS) {
            for (Stressor s : Stressor.values()) {
                double sum = 0;
                for (double[] row : played.rows().subList(1, played.rows().size())) {
                    sum += at(row, "hazard_" + s.name().toLowerCase(java.util.Locale.ROOT) + "_per_h");
                }
                double held = state(played.rows().get(played.rows().size() - 1), TankLayout.hazard(0, s));
                assertThat(sum).as("%s", s).isCloseTo(held, within(0.02 * held + 2e-5));
            }
        }
    }

    @Test
    void feedIsOfferedAndEatenAsTheLedgersSay() {
        for (Played played : RUNS) {
            double offeredG = 0;
            double uneatenG = 0;
            for (double[] row : played.rows().subList(1, played.rows().size())) {
                offeredG += at(row, "feed_offered_g_per_h");
                uneatenG += at(row, "feed_offered_g_per_h") - at(row, "feed_eaten_g_per_h");
                assertThat(at(row, "feed_eaten_g_per_h")).isBetween(-1e-9, at(row, "feed_offered_g_per_h") + 1e-9);
            }
            double[] first = played.rows().get(0);
            double[] last = played.rows().get(played.rows().size() - 1);
            double fedMg = state(last, TankLayout.FED) - state(first, TankLayout.FED);
            double protein = played.run().hidden().draw().parameters().proteinFraction();
            // 16 % of protein is nitrogen (Jones's general factor 6.25).
            assertThat(offeredG * 1000 * protein * 0.16).isCloseTo(fedMg, within(1e-6 * fedMg + 1e-6));
            assertThat(uneatenG).isGreaterThanOrEqualTo(-1e-9);
        }
    }

    @Test
    void valuesReadBackToTheSameBits() {
        for (Played played : RUNS) {
            for (double[] row : played.rows()) {
                String[] cells = HourColumn.line(row).split(",", -1);
                assertThat(cells).hasSize(HourColumn.ALL.size());
                for (int i = 0; i < row.length; i++) {
                    assertThat(Double.parseDouble(cells[i])).isEqualTo(row[i]);
                }
            }
        }
    }

    @Test
    void theFileIsCommaSeparatedValuesOfTheRfc() {
        StringWriter out = new StringWriter();
        int exit = Startwater.run(
                new String[] {"run", "first-strips", "--days", "2", "--seeds", "2", "--csv", "-"},
                new PrintWriter(out, true),
                new PrintWriter(new StringWriter()),
                w -> 77);
        assertThat(exit).isZero();
        String text = out.toString();
        assertThat(text).endsWith("\r\n").doesNotContain("\"");
        List<String> lines = text.lines().toList();
        assertThat(text.chars().filter(c -> c == '\r').count()).isEqualTo(lines.size());
        assertThat(lines.get(0)).isEqualTo(HourColumn.heading());
        Map<String, Integer> bySeed = new HashMap<>();
        lines.subList(1, lines.size()).forEach(l -> bySeed.merge(l.substring(0, l.indexOf(',')), 1, Integer::sum));
        assertThat(bySeed).isEqualTo(Map.of("1", 49, "2", 49));
    }

    @Test
    void theDocumentListsTheColumnsAsTheCommandDoes() throws IOException {
        String document = """
                # Columns of `run --csv`

                Written by `HourTableTest`; do not edit by hand. `startwater run --csv-columns` prints the table.

                One row stands for the end of one hour, from the first visit on, before whatever happens at that very
                moment. Flows and hazards are means of the hour that ends there, for the whole system; meals, changes
                and doses count in the hour that begins with them. Values are not rounded: they read back to the same
                number. The file is RFC 4180: commas, a heading, lines that end in CR LF.

                Flows close against states hour by hour: to 1 % of all that flowed, beside 0.002 mg N, mmol C or meq and
                0.01 mg O2 per litre. Hazards add up to the cumulative hazard to 2 %, beside 0.00002.

                """ + ColumnList.of(CliTexts.of(Language.EN));
        if (Boolean.getBoolean(WRITE)) {
            Files.writeString(DOCUMENT, document);
        }
        assertThat(Files.readString(DOCUMENT))
                .as("write it anew with -D%s=true", WRITE)
                .isEqualTo(document);
    }

    @Test
    void everyColumnSaysWhatItMeansInBothLanguages() {
        for (Language language : Language.values()) {
            for (HourColumn column : HourColumn.ALL) {
                assertThat(column.meaning(CliTexts.of(language)))
                        .as(column.name())
                        .isNotBlank()
                        .doesNotContain("csv.");
            }
        }
    }
}
