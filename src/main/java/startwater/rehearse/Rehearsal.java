package startwater.rehearse;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;
import startwater.fish.Species;

/** Plays the learner's own system on many hidden tanks. Same form, tanks and seed, same outlook on any number of threads. */
public final class Rehearsal {
    /** Hidden tanks, unless asked otherwise: the ends of the band then stand to about two days. */
    public static final int TANKS = 200;

    private static final double HALF = 0.5;

    private Rehearsal() {}

    /** Looks on while tanks are played; called from several threads. */
    public interface Progress {
        /** Nobody looks on. */
        Progress NONE = (done, most) -> true;

        /** So many of so many tanks are done. @return whether to go on */
        boolean at(int done, int most);
    }

    /**
     * What to expect.
     *
     * @param own a system that {@link SystemChecks} does not refuse
     * @param tanks how many hidden tanks, 1 or more
     * @param firstSeed number of the first
     * @throws CancellationException where progress says not to go on
     */
    public static Outlook of(OwnSystem own, int tanks, long firstSeed, Progress progress) {
        int most = own.second() == null ? tanks : 2 * tanks;
        AtomicInteger done = new AtomicInteger();
        Runnable step = () -> {
            if (!progress.at(done.incrementAndGet(), most)) {
                throw new CancellationException("rehearsal");
            }
        };
        Scenario drill = OwnScenario.ample(own, OwnScenario.of(own, OwnWords.slug(own.name())));
        List<TankStory> stories = play(drill, tanks, firstSeed, step);
        Outlook.Second second = own.second() == null ? null : second(own, stories, tanks, firstSeed, step);
        return outlook(drill, stories, second);
    }

    static List<TankStory> play(Scenario drill, int tanks, long firstSeed, Runnable step) {
        TankStory[] stories = new TankStory[tanks];
        IntStream.range(0, tanks).parallel().forEach(i -> {
            stories[i] = TankStory.of(drill, firstSeed + i);
            step.run();
        });
        return List.of(stories);
    }

    private static Outlook.Second second(
            OwnSystem own, List<TankStory> first, int tanks, long firstSeed, Runnable step) {
        Integer move = own.moveDay();
        int at = Math.min(move == null ? 0 : move, first.get(0).massG().length - 1);
        double massG = own.starting() == Starting.FISH_IN
                ? inTable(own, spread(first, s -> s.massG()[at]).middle())
                : Objects.requireNonNull(own.stock().massG());
        Scenario drill = OwnScenario.ample(own, OwnScenario.second(own, "second", massG));
        Scenario.Keeper k = drill.keeper();
        Scenario present = drill.withKeeper(
                new Scenario.Keeper(k.visitsAtHours(), k.days(), List.of(), k.decisions(), k.decisionVisits()));
        List<TankStory> stories = play(present, tanks, firstSeed, step);
        Spread ready = spread(stories, TankStory::ready);
        Integer latest = move == null || Double.isInfinite(ready.high()) || move < ready.high()
                ? null
                : (int) Math.floor(move - ready.high());
        return new Outlook.Second(massG, ready, present.keeper().days(), move, latest);
    }

    private static double inTable(OwnSystem own, double massG) {
        Species species = Objects.requireNonNull(own.stock().species());
        return Math.min(species.feed().massRangeG().high(), OwnScenario.rounded(massG));
    }

    private static Outlook outlook(Scenario s, List<TankStory> all, Outlook.@Nullable Second second) {
        int days = s.keeper().days();
        Scenario.Fish fish = Objects.requireNonNull(s.fishHereOrPlanned());
        Species species = Species.byId(fish.species());
        double each = fish.massG() * species.feed().fractionAtBest(fish.massG());
        return new Outlook(
                all.size(),
                days,
                s.fish() != null,
                fish.count(),
                spread(all, TankStory::ready),
                IntStream.rangeClosed(0, days)
                        .mapToObj(day -> share(all, t -> t.ready() <= day))
                        .toList(),
                daily(all, days, TankStory::ammonia),
                daily(all, days, TankStory::nitrite),
                spread(all, t -> t.peakDay(t.ammonia())),
                spread(all, t -> t.ammonia()[t.peakDay(t.ammonia())]),
                spread(all, t -> t.peakDay(t.nitrite())),
                spread(all, t -> t.nitrite()[t.peakDay(t.nitrite())]),
                Reckoned.rationG(species, fish.count(), fish.massG(), s.system().setPointC()),
                spread(all, TankStory::carriedG),
                spread(all, t -> t.carriedG() / each),
                spread(all, TankStory::volumes),
                spread(all, TankStory::litres),
                spread(all, TankStory::saltG),
                spread(all, TankStory::bicarbonateG),
                spread(all, TankStory::ammoniumG),
                spread(all, TankStory::neutraliserG),
                spread(all, TankStory::strips),
                spread(all, TankStory::chlorideStrips),
                spread(all, TankStory::workDays),
                IntStream.range(0, days)
                        .mapToObj(day -> share(all, t -> day < t.work().length && t.work()[day]))
                        .toList(),
                spread(all, TankStory::deaths),
                share(all, t -> t.deaths() > HALF * fish.count()),
                second);
    }

    private static double share(List<TankStory> all, java.util.function.Predicate<TankStory> holds) {
        return (double) all.stream().filter(holds).count() / all.size();
    }

    private static List<Spread> daily(
            List<TankStory> all, int days, java.util.function.Function<TankStory, double[]> of) {
        List<Spread> daily = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            int at = day;
            daily.add(spread(all, t -> of.apply(t)[at]));
        }
        return daily;
    }

    private static Spread spread(List<TankStory> all, ToDoubleFunction<TankStory> of) {
        return Spread.of(all.stream().mapToDouble(of).toArray());
    }
}
