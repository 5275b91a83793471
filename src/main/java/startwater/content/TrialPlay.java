package startwater.content;

import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.quantity.OutOfRangeException;
import startwater.score.Policies;
import startwater.score.Policy;
import startwater.score.PolicyPlayer;

/**
 * Plays a drill before anybody does: R27 and R38. Doing nothing and the standing rules play a few hidden tanks to the
 * end, and every state on the way is held against the ranges of the equations.
 */
final class TrialPlay {
    /** Hidden tanks by policy: enough to meet a slip of the author, few enough to take well under a second. */
    private static final int TANKS = 4;

    private static final List<Policy> PLAYERS = List.of(Policies.byId("do-nothing"), Policies.CAREFUL);

    private TrialPlay() {}

    /** What a play came upon first: a range that was left, or why it could not go on. */
    private record Trouble(
            Policy policy, double day, @Nullable OutOfRangeException left, String why) {}

    /** Notes what playing this drill comes upon, once for each range that is left. */
    static void play(ScenarioReader.Placed placed, Faults faults) {
        List<Trouble> troubles = PLAYERS.stream()
                .flatMap(policy -> LongStream.rangeClosed(1, TANKS)
                        .parallel()
                        .mapToObj(tank -> trouble(placed.scenario(), policy, tank))
                        .flatMap(Stream::ofNullable))
                .toList();
        troubles.stream()
                .map(TrialPlay::kind)
                .distinct()
                .forEach(kind -> note(
                        placed,
                        troubles.stream()
                                .filter(t -> kind(t).equals(kind))
                                .findFirst()
                                .orElseThrow(),
                        faults));
    }

    private static String kind(Trouble trouble) {
        OutOfRangeException left = trouble.left();
        return left == null ? trouble.why() : LeftRange.of(left).name();
    }

    /** Plays one tank. A fault of the play is one of the drill: it must not reach whoever opens it. */
    private static @Nullable Trouble trouble(Scenario scenario, Policy policy, long tank) {
        ValidityWatch watch = new ValidityWatch();
        try {
            PolicyPlayer.play(scenario, policy, tank, DrillRun.Pace.LEARNER, watch);
            return null;
        } catch (OutOfRangeException e) {
            return new Trouble(policy, watch.day(), e, "");
        } catch (RuntimeException e) {
            return new Trouble(
                    policy,
                    watch.day(),
                    null,
                    Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName()));
        }
    }

    private static void note(ScenarioReader.Placed placed, Trouble trouble, Faults faults) {
        OutOfRangeException left = trouble.left();
        if (left == null) {
            faults.add(0, Complaint.CANNOT_PLAY, "why", trouble.why());
        } else {
            LeftRange range = LeftRange.of(left);
            int line = new Blame(placed.root(), left.value() > left.high(), trouble.day()).line(range);
            faults.add(
                    line,
                    range.complaint(),
                    range.values(left, trouble.day(), trouble.policy().id()));
        }
    }
}
