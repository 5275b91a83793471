package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.fish.Stressor;
import startwater.score.Verdict.Information;
import startwater.score.Verdict.PadWorth;
import startwater.strip.Pad;

/** What can be read off a verdict. */
class VerdictTest {
    private static List<String> keys(List<Verdict.Line> lines) {
        return lines.stream().map(Verdict.Line::key).toList();
    }

    private static Verdict saying(String... keys) {
        return Verdicts.on(0, Verdicts.costing(Decision.LEAVE_ALONE, Component.WASTE, 1))
                .saying(keys)
                .made();
    }

    @Test
    void whatLeadsIsOneLineOfEachKindInTurnAndTheRestIsFolded() {
        Verdict v = saying(
                "rule.1", "costs.best", "does.safe", "said.nothing", "said.silent", "does.mayFail", "test.again");
        assertThat(keys(v.leading())).containsExactly("said.nothing", "does.safe", "costs.best");
        assertThat(keys(v.folded())).containsExactly("rule.1", "said.silent", "does.mayFail", "test.again");
    }

    @Test
    void atMostThreeLinesLeadAndLostCreditIsTheFirst() {
        Verdict v = saying("said.nothing", "does.safe", "costs.best", "credit.none");
        assertThat(keys(v.leading())).containsExactly("credit.none", "said.nothing", "does.safe");
        assertThat(keys(v.folded())).containsExactly("costs.best");
        assertThat(saying("rule.1").leading()).isEmpty();
    }

    @Test
    void theChosenAndTheBestAreFoundByTheirPlaces() {
        Verdict v = Verdicts.marked(40, Verdict.Word.COSTLY);
        assertThat(v.best().decision()).isEqualTo(Decision.LEAVE_ALONE.withFeed(0));
        assertThat(v.chosen().decision()).isEqualTo(Decision.LEAVE_ALONE);
        assertThat(v.chosen().part(Component.WASTE)).isEqualTo(2);
        assertThat(v.chosen().part(Component.GROWTH)).isZero();
        Verdict.Option dying = Verdicts.option(Decision.LEAVE_ALONE, Map.of(), Map.of(Stressor.NITRITE, 3.0), 0);
        assertThat(dying.deathsBy(Stressor.NITRITE)).isEqualTo(3);
        assertThat(dying.deathsBy(Stressor.AMMONIA)).isZero();
    }

    @Test
    void anotherStripIsWorthReadingOverItsPriceOnly() {
        assertThat(new Information(0.03, 0.02, 1, List.of()).retest()).isTrue();
        assertThat(new Information(0.02, 0.02, 1, List.of()).retest()).isFalse();
        assertThat(new Information(0.01, 0.02, 1, List.of()).retest()).isFalse();
    }

    @Test
    void theMostTellingPadIsThatOfMostWorthAndNoneWithoutAny() {
        PadWorth nothing = new PadWorth(Pad.PH, true, 0);
        PadWorth little = new PadWorth(Pad.AMMONIA, true, 0.1);
        PadWorth much = new PadWorth(Pad.NITRITE, false, 0.3);
        PadWorth asMuch = new PadWorth(Pad.CHLORIDE, false, 0.3);
        Information all = new Information(0, 0, 1, List.of(nothing, little, much, asMuch));
        assertThat(Objects.requireNonNull(all.mostTelling()).pad()).isEqualTo(Pad.NITRITE);
        Information falling = new Information(0, 0, 1, List.of(much, little));
        assertThat(Objects.requireNonNull(falling.mostTelling()).pad()).isEqualTo(Pad.NITRITE);
        assertThat(new Information(0, 0, 1, List.of(nothing)).mostTelling()).isNull();
        assertThat(Verdicts.NO_TEST.mostTelling()).isNull();
    }
}
