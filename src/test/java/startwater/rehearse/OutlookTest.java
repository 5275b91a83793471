package startwater.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import startwater.bench.UnitSystem;
import startwater.drill.Scenario;
import startwater.text.Language;
import startwater.text.Texts;

class OutlookTest {
    private static final long FRESH = 1_000_001;

    private static Outlook outlook(String name, int tanks) {
        return Rehearsal.of(OwnSystem.of(Systems.form(name)), tanks, 1, Rehearsal.Progress.NONE);
    }

    /** How many of so many tanks that the outlook has not seen are ready within its band. */
    private static long held(String name, int tanks, int fresh) {
        Spread band = outlook(name, tanks).ready();
        OwnSystem own = OwnSystem.of(Systems.form(name));
        Scenario drill = OwnScenario.ample(own, OwnScenario.of(own, name));
        return Rehearsal.play(drill, fresh, FRESH, () -> {}).stream()
                .filter(t -> band.holds(t.ready()))
                .count();
    }

    /** Few tanks, so the band may hold as little as half of the fresh ones; a band of the middle half would fail. */
    @ParameterizedTest
    @FieldSource("startwater.rehearse.Systems#ALL")
    void theBandHoldsMostFreshTanks(String name) {
        assertThat(held(name, 20, 20)).isBetween(12L, 19L);
    }

    @Tag("full")
    @ParameterizedTest
    @FieldSource("startwater.rehearse.Systems#ALL")
    void theBandHoldsEightFreshTanksInTen(String name) {
        assertThat(held(name, Rehearsal.TANKS, 100)).isBetween(70L, 90L);
    }

    @Test
    void sameFormSameOutlookOnAnyNumberOfThreads() throws Exception {
        Outlook usual = outlook(Systems.SPONGE_BARREL, 4);
        ForkJoinPool one = new ForkJoinPool(1);
        try {
            assertThat(one.submit(() -> outlook(Systems.SPONGE_BARREL, 4)).get())
                    .isEqualTo(usual);
        } finally {
            one.shutdownNow();
        }
    }

    @Test
    void whoStopsItGetsNothing() {
        OwnSystem own = OwnSystem.of(Systems.form(Systems.SPONGE_BARREL));
        assertThatThrownBy(() -> Rehearsal.of(own, 40, 1, (done, most) -> done < 3))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void theSecondSystemIsFilledEarlyEnough() {
        Outlook outlook = outlook(Systems.RAIN_CARP, 12);
        Outlook.Second second = Objects.requireNonNull(outlook.second());
        int latest = Objects.requireNonNull(second.latestStart());
        assertThat(latest + second.ready().high()).isLessThanOrEqualTo(60).isGreaterThan(59);
        assertThat(second.massG()).isGreaterThan(40);
        Form soon = Systems.form(Systems.RAIN_CARP).with(Entry.MOVE_DAY, "20");
        Outlook late = Rehearsal.of(OwnSystem.of(soon), 12, 1, Rehearsal.Progress.NONE);
        assertThat(Objects.requireNonNull(late.second()).latestStart()).isNull();
        assertThat(Systems.codes(OutlookChecks.of(OwnSystem.of(soon), late), Finding.Weight.WARN))
                .contains("secondTooLate", "fewPieces", "awayBusyDay");
    }

    @Test
    void chancesRiseAndEndWithTheShareThatIsReady() {
        Outlook outlook = outlook(Systems.TROUT_RACEWAY, 8);
        assertThat(outlook.readyBy()).isSorted();
        assertThat(outlook.readyBy((int) Math.ceil(outlook.ready().high()))).isGreaterThanOrEqualTo(0.875);
        assertThat(outlook.readyBy(0)).isZero();
        assertThat(outlook.ammonia()).hasSize(outlook.days());
    }

    /** Wherever a ready day is shown it is said that only tests move fish; each number has its unit; nothing is left open. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void theListIsAPageOfItsOwnAndSaysThatTestsMoveFish(Language language) {
        Texts texts = RehearseTexts.of(language);
        Form form = Systems.form(Systems.RAIN_CARP);
        OwnSystem own = OwnSystem.of(form);
        Outlook outlook = Rehearsal.of(own, 4, 1, Rehearsal.Progress.NONE);
        for (UnitSystem units : UnitSystem.values()) {
            String page = ReadinessList.of(form.in(units), outlook, OutlookChecks.of(own, outlook), texts);
            assertThat(page)
                    .startsWith("<!DOCTYPE html>")
                    .contains(texts.text("reh.out.caution"), texts.text("reh.list.caution4"))
                    .contains(units == UnitSystem.US ? " lb" : " kg")
                    .doesNotContain("<script", "src=", "href=", "NaN", "Infinity", "{0}", "?</td>");
        }
    }

    @Test
    void spreadsTakeTheTenthTheMiddleAndTheNinetieth() {
        double never = Double.POSITIVE_INFINITY;
        assertThat(Spread.of(10, 0, 5, 1, 9, 2, 8, 3, 7, 4, 6)).isEqualTo(new Spread(1, 5, 9));
        assertThat(Spread.of(1, 2, never)).isEqualTo(new Spread(1.2, 2, never));
        assertThat(Spread.of(never)).isEqualTo(new Spread(never, never, never));
    }
}
