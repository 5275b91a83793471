package startwater.score;

import java.util.*;
import org.junit.jupiter.api.Test;
import startwater.drill.*;

class ScratchTest {
    @Test
    void t() {
        Scenario s = TrialScenario.secondWeek(15);
        for (int seed = 1; seed < 4; seed++) {
            DrillRun run = PolicyPlayer.play(
                    s,
                    Policies.byId(seed == 1 ? "careful" : seed == 2 ? "feeds-because-they-beg" : "hold-feed"),
                    seed,
                    DrillRun.Pace.LEARNER);
            System.out.println("alive " + run.past().last().seen().alive());
            for (int i = 0; i < run.past().size(); i++) {
                VisitRecord v = run.past().visits().get(i);
                if (!v.asked()) continue;
                long t0 = System.nanoTime();
                Case c = new Case(s, run.past().upTo(i));
                Belief b = Belief.of(s, c.log());
                long t1 = System.nanoTime();
                Verdict verdict = Judge.judge(c);
                long t2 = System.nanoTime();
                System.out.printf(
                        "seed %d day %.2f belief %d ms judge %d ms ESS %.1f odd %d mark %.0f %s scored %s regret %.3f se %.3f arguable %s%n",
                        seed,
                        v.day(),
                        (t1 - t0) / 1000000,
                        (t2 - t1) / 1000000,
                        b.effective(),
                        b.oddReadings(),
                        verdict.mark(),
                        verdict.word(),
                        verdict.scored(),
                        verdict.regret(),
                        verdict.standardError(),
                        verdict.arguable());
                WhyText why = WhyText.in(Locale.ENGLISH);
                if (seed >= 1) {
                    for (var o : verdict.options())
                        System.out.printf(
                                "   %-45s loss %.3f deaths %.2f [%.2f %.2f] parts %s %s%n",
                                why.decision(o.decision()),
                                o.loss(),
                                o.deaths(),
                                o.deathsLow(),
                                o.deathsHigh(),
                                o.parts().stream()
                                        .map(x -> String.format("%.2f", x))
                                        .toList(),
                                (o.own() ? "own " : "") + (o.rules() ? "rules" : ""));
                    for (var l : verdict.lines()) System.out.println("     - " + why.format(l));
                }
                for (var r : verdict.ranges())
                    if (r.pad().ordinal() < 2) System.out.printf("     %s %s next %s%n", r.pad(), r.today(), r.next());
            }
        }
    }
}
