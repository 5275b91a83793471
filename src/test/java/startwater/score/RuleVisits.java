package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.strip.FishMood;
import startwater.strip.Pad;
import startwater.water.UnionisedAmmonia;

/** A keeper of catfish who comes to a visit, for the tests of the standing rules. */
abstract class RuleVisits {
    static final StandingRules RULES = new StandingRules();
    static final Scenario CATFISH = TrialScenario.secondWeek(200);
    static final double PH = 8;

    Scenario drill = CATFISH;
    double temperature = 26;
    double oxygen = 7;
    boolean air = true;
    int found;
    int hours = 12;
    FishMood mood = FishMood.CALM;

    @Nullable
    Notebook book;

    int minute = 10 * Calendar.DAY;

    /** A visit with all pads read; toxic ammonia is what is asked for. */
    Notebook visit(double toxic, double nitrite, double alkalinity, double chloride) {
        return visit(toxic / UnionisedAmmonia.fraction(PH, temperature), nitrite, PH, alkalinity, chloride);
    }

    Notebook visit(double tan, double nitrite, double ph, double alkalinity, double chloride) {
        Notebook at = come();
        at.read(Pad.AMMONIA, tan);
        at.read(Pad.NITRITE, nitrite);
        at.read(Pad.PH, ph);
        at.read(Pad.ALKALINITY, alkalinity);
        at.read(Pad.CHLORIDE, chloride);
        return at;
    }

    Notebook come() {
        Notebook at = book == null ? new Notebook(drill) : book;
        book = at;
        at.arrive(
                minute,
                minute + hours * 60,
                new Notebook.Sight(temperature, oxygen, mood, air, 100, found, 240 - found, 0));
        minute += hours * 60;
        return at;
    }

    static Decision decide(Notebook at) {
        return RULES.decide(at);
    }

    static void says(Notebook at, double feed, double change, int rule) {
        assertThat(decide(at).feed()).as("feed").isEqualTo(feed);
        assertThat(decide(at).change()).as("change").isEqualTo(change);
        assertThat(RULES.ruling(at).rules()).contains(rule);
    }
}
