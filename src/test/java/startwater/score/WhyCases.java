package startwater.score;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/** Cases by name, each the setting of some sentences of the explanation. */
final class WhyCases {
    private static final Scenario WEEK = TrialScenario.secondWeek(15);

    private WhyCases() {}

    static Map<String, Case> all() {
        Map<String, Case> all = new LinkedHashMap<>();
        all.put("nothing read", of(WEEK, Decision.LEAVE_ALONE));
        all.put(
                "calm",
                of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 0.2, Pad.NITRITE, 0, Pad.PH, 7.4, Pad.ALKALINITY, 100));
        all.put("nitrite uncovered", of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 1, Pad.NITRITE, 5, Pad.PH, 7.8));
        all.put(
                "nitrite short",
                of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 1, Pad.NITRITE, 2, Pad.PH, 7.4, Pad.CHLORIDE, 20));
        all.put(
                "salt forgotten",
                of(
                        WEEK,
                        Decision.LEAVE_ALONE.withFeed(0.5),
                        Pad.AMMONIA,
                        1,
                        Pad.NITRITE,
                        2,
                        Pad.PH,
                        7.4,
                        Pad.CHLORIDE,
                        20));
        all.put(
                "nitrite covered",
                of(
                        TrialScenario.secondWeek(150),
                        Decision.LEAVE_ALONE,
                        Pad.AMMONIA,
                        0.2,
                        Pad.NITRITE,
                        1,
                        Pad.PH,
                        7.4,
                        Pad.CHLORIDE,
                        150));
        all.put("a little toxic", of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 1, Pad.NITRITE, 0.2, Pad.PH, 7.8));
        all.put("toxic", of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 5, Pad.NITRITE, 0.5, Pad.PH, 7.8));
        all.put("rather toxic", of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 2, Pad.NITRITE, 0.5, Pad.PH, 7.8));
        all.put("much nitrite", of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 1, Pad.NITRITE, 10, Pad.PH, 7.4));
        all.put("away, nothing read", of(TrialScenario.awayAfter(20), Decision.LEAVE_ALONE));
        all.put(
                "very toxic and sour",
                of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 10, Pad.NITRITE, 1, Pad.PH, 8.2, Pad.ALKALINITY, 50));
        all.put(
                "away",
                of(
                        TrialScenario.awayAfter(20),
                        Decision.LEAVE_ALONE.withFeed(0.5),
                        Pad.AMMONIA,
                        1,
                        Pad.NITRITE,
                        0.5,
                        Pad.PH,
                        7.4));
        all.put(
                "water poured away",
                of(WEEK, Decision.LEAVE_ALONE.withChange(0.75), Pad.AMMONIA, 0.2, Pad.NITRITE, 0, Pad.PH, 7.4));
        all.put(
                "scrubbed",
                of(
                        WEEK,
                        Decision.LEAVE_ALONE.withFilter(FilterCare.SCRUB),
                        Pad.AMMONIA,
                        0.2,
                        Pad.NITRITE,
                        0.1,
                        Pad.PH,
                        7.4));
        all.put(
                "sour",
                of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 0.2, Pad.NITRITE, 0, Pad.PH, 7, Pad.ALKALINITY, 50));
        all.put(
                "best of a bad day",
                Objects.requireNonNull(all.get("sour"))
                        .choosing(Decision.LEAVE_ALONE.withFeed(0.5).withChange(0.75)));
        all.put(
                "away a week, best done",
                best(of(
                        TrialScenario.awayAWeek(20),
                        Decision.LEAVE_ALONE,
                        Pad.AMMONIA,
                        0.5,
                        Pad.NITRITE,
                        1,
                        Pad.PH,
                        8.2,
                        Pad.ALKALINITY,
                        100)));
        all.put("low oxygen", seen(of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 0.5, Pad.PH, 7.4), 4.4, true, 0));
        all.put("air off", seen(of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 0.5, Pad.PH, 7.4), 3.0, false, 0));
        all.put("old blower", of(TrialScenario.oldBlower(), Decision.LEAVE_ALONE, Pad.AMMONIA, 0.2, Pad.PH, 7.4));
        all.put("dead fish", seen(of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 5, Pad.PH, 7.8), 7.0, true, 6));
        all.put(
                "cold",
                of(TrialScenario.cold(), Decision.LEAVE_ALONE, Pad.AMMONIA, 0.5, Pad.NITRITE, 0.2, Pad.PH, 7.4));
        all.put(
                "impossible",
                of(WEEK, Decision.LEAVE_ALONE, Pad.AMMONIA, 200, Pad.PH, 6.2, Pad.AMMONIA, 200, Pad.PH, 6.2));
        Scenario fishless = TrialScenario.fishless();
        all.put("fishless, waiting", of(fishless, Decision.LEAVE_ALONE, Pad.AMMONIA, 2, Pad.NITRITE, 0.1));
        all.put("fishless, half-way", of(fishless, Decision.LEAVE_ALONE, Pad.AMMONIA, 0.5, Pad.NITRITE, 5));
        all.put("fishless, both under one", of(fishless, Decision.LEAVE_ALONE, Pad.AMMONIA, 0.5, Pad.NITRITE, 0.2));
        all.put("fishless, proved", proved(fishless));
        Scenario crowded = BentDrill.beside("crowded-nursery")
                .setIn("nursery", "  mediaAreaM2", 26)
                .made();
        Case waiting = of(crowded, Decision.LEAVE_ALONE, Pad.AMMONIA, 2, Pad.NITRITE, 5, Pad.PH, 8);
        all.put("nursery, dying", lost(waiting, 40));
        all.put("nursery, too early", waiting.choosing(Decision.LEAVE_ALONE.withStock(0.5)));
        all.put("fishless, overdosed", of(fishless, Decision.LEAVE_ALONE, Pad.AMMONIA, 10, Pad.NITRITE, 0.1));
        return all;
    }

    /** The same case with the best of its options chosen. */
    private static Case best(Case c) {
        Scored scored = Judge.score(c);
        return c.choosing(scored.options().get(scored.losses().best()));
    }

    /** The case of this name. */
    static Case named(String name) {
        return Objects.requireNonNull(all().get(name), name);
    }

    /** A first visit with pads and values in turn. */
    private static Case of(Scenario s, Decision d, Object... readings) {
        VisitRecord v = DrillRun.start(s, 5, DrillRun.Pace.LEARNER).now();
        for (int i = 0; i < readings.length; i += 2) {
            Pad pad = (Pad) readings[i];
            double value = ((Number) readings[i + 1]).doubleValue();
            int dilution = value > pad.scale().blockValue(pad.scale().blocks() - 1) ? 10 : 1;
            int stop = pad.scale().nearestStop(pad.scale().position(value / dilution));
            v = v.with(new Written(pad, stop, dilution, i / 4));
        }
        return new Case(s, new DrillLog(List.of(v.decided(d, null))));
    }

    /** A full dose was gone by the third visit, nitrite too. */
    private static Case proved(Scenario s) {
        DrillRun run = DrillRun.start(s, 5, DrillRun.Pace.EVERY_VISIT);
        run.decide(Decision.LEAVE_ALONE.withAmmoniumChloride(20), null);
        run.decide(Decision.LEAVE_ALONE, null);
        Case gone = of(s, Decision.LEAVE_ALONE, Pad.AMMONIA, 0, Pad.NITRITE, 0);
        VisitRecord v = run.now();
        for (Written w : gone.visit().written()) {
            v = v.with(w);
        }
        return new Case(s, run.past().plus(v.decided(Decision.LEAVE_ALONE, null)));
    }

    /** The same where so many have died in the nursery. */
    private static Case lost(Case c, int dead) {
        VisitRecord v = c.visit();
        Seen s = v.seen();
        return with(
                c,
                new Seen(
                        s.temperatureC(),
                        s.oxygenMgPerL(),
                        s.ph(),
                        s.mood(),
                        s.found(),
                        s.alive(),
                        s.uneatenG(),
                        s.haze(),
                        s.brownGills(),
                        s.air(),
                        s.pump(),
                        s.power(),
                        s.heater(),
                        s.flowPercent(),
                        s.toCome() - dead,
                        s.toComeMassG(),
                        s.told()));
    }

    private static Case seen(Case c, double oxygen, boolean air, int found) {
        VisitRecord v = c.visit();
        Seen s = v.seen();
        Seen other = new Seen(
                s.temperatureC(),
                oxygen,
                s.ph(),
                s.mood(),
                found,
                s.alive() - found,
                s.uneatenG(),
                s.haze(),
                s.brownGills(),
                air,
                s.pump(),
                s.power(),
                s.heater(),
                s.flowPercent(),
                s.toCome(),
                s.toComeMassG(),
                s.told());
        return with(c, other);
    }

    private static Case with(Case c, Seen other) {
        VisitRecord v = c.visit();
        List<VisitRecord> visits = new ArrayList<>(c.log().visits());
        visits.set(
                0, new VisitRecord(v.visit(), v.minute(), v.actor(), other, v.written(), v.decision(), v.prediction()));
        return new Case(c.scenario(), new DrillLog(visits));
    }
}
