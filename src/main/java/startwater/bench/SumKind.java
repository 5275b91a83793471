package startwater.bench;

import static startwater.bench.Input.positive;
import static startwater.bench.Input.required;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The sums there are, and what each asks for. */
public enum SumKind {
    TOXIC_AMMONIA(
            "toxic-ammonia",
            given -> WaterSums.toxicAmmonia(given.get("tan"), given.get("ph"), given.get("temperature")),
            required("tan", Unit.MG_N_PER_L, 0, 10_000),
            required("ph", Unit.PH, 0, 14),
            required("temperature", Unit.CELSIUS, 0, 50)),
    OXYGEN(
            "oxygen",
            given -> WaterSums.oxygen(given.get("temperature"), given.get("altitude"), given.get("salinity")),
            required("temperature", Unit.CELSIUS, 0, 40),
            required("altitude", Unit.METRE, 0, 4000).optional(0),
            required("salinity", Unit.G_PER_KG, 0, 40).optional(0)),
    WATER_CHANGE(
            "water-change",
            given -> WaterSums.waterChange(given.get("now"), given.get("target"), given.get("source")),
            required("now", Unit.NONE, 0, 1e6),
            required("target", Unit.NONE, 0, 1e6).labelled("target-any"),
            required("source", Unit.NONE, 0, 1e6)),
    SALT(
            "salt",
            given ->
                    DoseSums.salt(given.get("volume"), given.get("nitrite"), given.get("chloride"), given.get("ratio")),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES),
            required("nitrite", Unit.MG_N_PER_L, 0, 1000),
            required("chloride", Unit.MG_PER_L, 0, 20_000),
            positive("ratio", Unit.NONE, 1000).optional(10)),
    BUFFER(
            "buffer",
            given -> DoseSums.buffer(given.get("volume"), given.get("alkalinity"), given.get("target")),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES),
            required("alkalinity", Unit.MG_CACO3_PER_L, 0, 5000),
            required("target", Unit.MG_CACO3_PER_L, 0, 5000).labelled("target-alkalinity")),
    RATION(
            "ration",
            given -> FeedSums.ration(given.get("fish"), given.get("mass"), given.species(), given.get("temperature")),
            required("fish", Unit.NONE, 1, 1e9),
            positive("mass", Unit.GRAM, 100_000),
            required("temperature", Unit.CELSIUS, 0, 45)),
    AMMONIA_DOSE(
            "ammonia-dose",
            given -> given.has("strength")
                    ? DoseSums.ammoniaSolution(given.get("volume"), given.get("target"), given.get("strength"))
                    : DoseSums.ammoniumChloride(given.get("volume"), given.get("target")),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES),
            required("target", Unit.MG_N_PER_L, 0, 1000).labelled("target-ammonia"),
            positive("strength", Unit.PERCENT, 100).optional(OptionalDouble.empty())),
    DECHLORINATE(
            "dechlorinate",
            given -> DoseSums.dechlorinate(given.get("volume"), given.get("chlorine")),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES),
            required("chlorine", Unit.MG_PER_L, 0, 1000)),
    LOAD(
            "load",
            given ->
                    FeedSums.load(given.get("cleared"), given.get("volume"), given.get("protein"), given.get("ration")),
            required("cleared", Unit.MG_N_PER_L_DAY, 0, 1000),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES),
            positive("protein", Unit.PERCENT, 100),
            positive("ration", Unit.PERCENT_PER_DAY, 100).optional(FeedSums.COMMON_RATION_PERCENT)),
    WATER(
            "water",
            given -> ClosedWater.after(
                    given.get("temperature"),
                    given.get("alkalinity"),
                    given.get("ph"),
                    new ClosedWater.Change(
                            given.get("bicarbonate"),
                            given.get("carbonate"),
                            given.get("nitrified"),
                            given.get("carbon-dioxide"))),
            required("temperature", Unit.CELSIUS, 0, 50),
            required("alkalinity", Unit.MG_CACO3_PER_L, 0, 5000),
            required("ph", Unit.PH, 3, 12),
            required("bicarbonate", Unit.MG_PER_L, 0, 10_000).optional(0),
            required("carbonate", Unit.MG_PER_L, 0, 10_000).optional(0),
            required("nitrified", Unit.MG_N_PER_L, 0, 1000).optional(0),
            required("carbon-dioxide", Unit.MG_PER_L, -10_000, 10_000).optional(0)),
    AFTER_CHANGE(
            "after-change",
            given -> PlanSums.afterChange(given.get("now"), given.get("change"), given.get("source")),
            required("now", Unit.NONE, 0, 1e6),
            required("change", Unit.PERCENT, 0, 100),
            required("source", Unit.NONE, 0, 1e6)),
    SETTLE(
            "settle",
            given -> PlanSums.settle(given.get("source"), given.get("made"), given.get("exchange")),
            required("source", Unit.NONE, 0, 1e6),
            required("made", Unit.NONE, 0, 1e6),
            positive("exchange", Unit.PERCENT_PER_DAY, 1000)),
    UNTIL(
            "until",
            given -> PlanSums.until(given.get("now"), given.get("limit"), given.get("per-day")),
            required("now", Unit.NONE, 0, 1e6).labelled("now-any"),
            required("limit", Unit.NONE, 0, 1e6),
            positive("per-day", Unit.NONE, 1e6)),
    CATCH_UP(
            "catch-up",
            given -> PlanSums.catchUp(given.get("now"), given.get("needed"), given.get("doubling")),
            positive("now", Unit.NONE, 1e6).labelled("now-any"),
            positive("needed", Unit.NONE, 1e6),
            positive("doubling", Unit.NONE, 1000)),
    AIR_OFF(
            "air-off",
            given -> PlanSums.airOff(
                    given.get("oxygen"), given.get("limit"), given.get("stock"), given.get("volume"), given.get("use")),
            required("oxygen", Unit.MG_PER_L, 0, 50),
            required("limit", Unit.MG_PER_L, 0, 50).labelled("limit-oxygen"),
            positive("stock", Unit.KILOGRAM, 1e6),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES),
            positive("use", Unit.MG_PER_KG_HOUR, 10_000)),
    WASTE(
            "waste",
            given -> PlanSums.waste(given.get("feed"), given.get("protein"), given.get("volume")),
            required("feed", Unit.GRAM, 0, 1e7),
            positive("protein", Unit.PERCENT, 100),
            positive("volume", Unit.LITRE, SumKind.MOST_LITRES)),
    AS_NITROGEN(
            "as-nitrogen", given -> PlanSums.asNitrogen(given.get("ion")), required("ion", Unit.MG_PER_L, 0, 10_000)),
    DILUTION(
            "dilution",
            given -> PlanSums.dilution(given.get("reading"), given.get("tank"), given.get("clean")),
            required("reading", Unit.NONE, 0, 1e6),
            positive("tank", Unit.NONE, 1000).labelled("tank-parts"),
            required("clean", Unit.NONE, 0, 1000).labelled("clean-parts")),
    VOLUME_BY_SALT(
            "volume-by-salt",
            given -> PlanSums.volumeBySalt(given.get("salt"), given.get("rise")),
            positive("salt", Unit.GRAM, 1e9),
            positive("rise", Unit.MG_PER_L, 20_000));

    private static final double MOST_LITRES = 1e9;

    private final String id;

    // The functions hold no state and List.of cannot change; the checker cannot see either.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<Given, Sum> work;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Input> inputs;

    SumKind(String id, Function<Given, Sum> work, Input... inputs) {
        this.id = id;
        this.work = work;
        this.inputs = List.of(inputs);
    }

    /** Stable name, as on the command line. */
    public String id() {
        return id;
    }

    public List<Input> inputs() {
        return inputs;
    }

    /** The input of this name. */
    public Input input(String name) {
        return inputs.stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Sum " + id + " has no input '" + name + "'"));
    }

    /** Whether it also asks which species. */
    public boolean asksSpecies() {
        return this == RATION;
    }

    /**
     * Works the sum from named numbers, as a form or a command line gives them.
     *
     * @throws RefusedInputException when something is missing or cannot be
     */
    public Sum work(Given given) {
        return work.apply(given.of(this));
    }

    /** The numbers checked and named, in the order of the inputs. */
    List<Measure> measures(double... values) {
        Measure[] measures = new Measure[values.length];
        for (int i = 0; i < values.length; i++) {
            Input input = inputs.get(i);
            measures[i] = new Measure(input.name(), input.check(values[i]), input.unit());
        }
        return List.of(measures);
    }

    /** Key of the line of working. */
    String working() {
        return "sum." + id + ".working";
    }

    /** Key of what always to bear in mind. */
    String note() {
        return "sum." + id + ".note";
    }
}
