package startwater.text;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Verdict;
import startwater.score.WhyText;
import startwater.strip.Pad;
import startwater.strip.Scale;
import startwater.water.Dose;

/** A drill in the words of one language: what is seen, what is written, what is about to be done. */
public final class DrillWords {
    private static final double CLEAR_HAZE = 0.1;
    private static final double MILKY_HAZE = 0.4;
    private static final double LITTLE_UNEATEN_G = 1;
    /** From here on nobody sees that less comes out of the filter. */
    private static final int WHOLE_FLOW_PERCENT = 95;
    /** From so many days on a weekday would mislead. */
    private static final int WEEKDAY_DAYS = 6;

    private final Texts texts;
    private final WhyText why;

    public DrillWords(Texts texts) {
        this.texts = texts;
        this.why = WhyText.in(texts.language().locale());
    }

    public Texts texts() {
        return texts;
    }

    public WhyText why() {
        return why;
    }

    public Scenario.Words scenario(Scenario scenario) {
        return scenario.words(texts.language().code());
    }

    /** The rules in which the debrief of this drill ends, as its file promises. */
    public List<String> rules(Scenario scenario) {
        return scenario.rules().stream().map(rule -> why.rule(rule, scenario)).toList();
    }

    private Locale locale() {
        return texts.language().locale();
    }

    /** Day 0 is a Monday. */
    private static DayOfWeek weekday(int minute) {
        return DayOfWeek.of(Math.floorMod(Math.floorDiv(minute, Calendar.DAY), 7) + 1);
    }

    /** For example {@code Tue}. */
    public String shortDay(int minute) {
        return weekday(minute).getDisplayName(TextStyle.SHORT_STANDALONE, locale());
    }

    /** For example {@code 07:10}. */
    public static String hour(int minute) {
        int of = Math.floorMod(minute, Calendar.DAY);
        return String.format(Locale.ROOT, "%02d:%02d", of / 60, of % 60);
    }

    /** For example {@code Tue 07:10, day 9}. */
    public String clock(int minute) {
        return texts.text("clock", shortDay(minute), hour(minute), Math.floorDiv(minute, Calendar.DAY));
    }

    /** A moment to come as people say it: "17:00", "tomorrow 07:00", "Friday 07:00", "day 23, 07:00". */
    public String when(int minute, int now) {
        int days = Math.floorDiv(minute, Calendar.DAY) - Math.floorDiv(now, Calendar.DAY);
        if (days == 0) {
            return hour(minute);
        }
        if (days == 1) {
            return texts.text("when.tomorrow", hour(minute));
        }
        return days <= WEEKDAY_DAYS
                ? texts.text(
                        "when.weekday",
                        weekday(minute).getDisplayName(TextStyle.FULL_STANDALONE, locale()),
                        hour(minute))
                : texts.text("when.day", Math.floorDiv(minute, Calendar.DAY), hour(minute));
    }

    /** The same, only the day, for a heading. */
    public String day(int minute, int now) {
        int days = Math.floorDiv(minute, Calendar.DAY) - Math.floorDiv(now, Calendar.DAY);
        return days > 1 && days <= WEEKDAY_DAYS
                ? weekday(minute).getDisplayName(TextStyle.FULL_STANDALONE, locale())
                : when(minute, now);
    }

    public String pad(Pad pad) {
        return texts.text("pad." + pad.name().toLowerCase(Locale.ROOT));
    }

    /** A pad with the unit of its scale, where it has one: "nitrite, mg N/L". */
    public String padAndUnit(Pad pad) {
        String unit = unit(pad);
        return unit.isEmpty() ? pad(pad) : pad(pad) + ", " + unit;
    }

    /** The unit a pad's scale is printed in; empty for pH. */
    public String unit(Pad pad) {
        return switch (pad) {
            case AMMONIA, NITRITE, NITRATE -> texts.text("unit.mgNPerL");
            case ALKALINITY -> texts.text("unit.mgCaco3PerL");
            case CHLORINE, CHLORIDE -> texts.text("unit.mgPerL");
            case PH -> "";
        };
    }

    /** A block of a pad's scale. */
    public String block(Pad pad, int block) {
        double value = pad.scale().blockValue(block);
        return pad == Pad.PH ? texts.decimals(value, 1) : texts.number(value);
    }

    /** A stop as it is written down: {@code 1}, or {@code 1–2} for a between. */
    public String stop(Pad pad, int stop, int dilution) {
        int times = pad == Pad.PH ? 1 : dilution;
        return stop % 2 == 0
                ? scaled(pad, stop / 2, times)
                : scaled(pad, stop / 2, times) + "–" + scaled(pad, stop / 2 + 1, times);
    }

    private String scaled(Pad pad, int block, int times) {
        Scale scale = pad.scale();
        return pad == Pad.PH
                ? texts.decimals(scale.blockValue(block), 1)
                : texts.number(scale.blockValue(block) * times);
    }

    public String written(Written w) {
        return stop(w.pad(), w.stop(), w.dilution());
    }

    /** What eyes tell, most telling first: the fish, the dead, what lies there, the water. */
    public List<String> sight(Seen seen) {
        List<String> said = new ArrayList<>();
        said.add(
                seen.mood() == null
                        ? texts.text("mood.none")
                        : texts.text("mood." + seen.mood().name().toLowerCase(Locale.ROOT)));
        if (seen.found() > 0) {
            said.add(texts.text("seen.found", seen.found()));
        }
        if (seen.brownGills()) {
            said.add(texts.text("seen.brownGills"));
        }
        if (seen.mood() != null) {
            said.add(
                    seen.uneatenG() < LITTLE_UNEATEN_G
                            ? texts.text("seen.noneUneaten")
                            : texts.text("seen.uneaten", Math.rint(seen.uneatenG())));
        }
        said.add(haze(seen.haze()));
        seen.told().forEach(k -> said.add(texts.text("told." + k.name().toLowerCase(Locale.ROOT))));
        if (seen.toCome() > 0) {
            said.add(texts.text("seen.toCome", seen.toCome(), Math.rint(seen.toComeMassG())));
        }
        return said;
    }

    private String haze(double haze) {
        return texts.text(haze < CLEAR_HAZE ? "haze.clear" : haze < MILKY_HAZE ? "haze.milky" : "haze.thick");
    }

    /** What runs and what does not. */
    public String running(Seen seen) {
        List<String> said = new ArrayList<>();
        if (!seen.power()) {
            said.add(texts.text("power.off"));
        }
        said.add(texts.text(seen.pump() ? "pump.on" : "pump.off"));
        if (seen.flowPercent() < WHOLE_FLOW_PERCENT) {
            said.add(texts.text("pump.flow", seen.flowPercent()));
        }
        if (!seen.heater()) {
            said.add(texts.text("heater.off"));
        }
        return String.join(" ", said);
    }

    /** What is about to be done, said back. @param main the first sentence, @param rest what else, or empty */
    public record Statement(String main, String rest) {}

    /** Says a decision back before it is done. */
    public Statement statement(Decision d, VisitFacts facts) {
        VisitFacts f = facts.with(d);
        List<String> parts = new ArrayList<>();
        if (f.fishIn()) {
            parts.add(feed(d, f));
        }
        parts.add(
                d.change() > 0
                        ? texts.text("state.change", d.change() * f.volumeL(), 100 * d.change())
                        : texts.text("state.noChange"));
        List<String> rest = new ArrayList<>();
        for (Dose compound :
                List.of(Dose.SODIUM_CHLORIDE, Dose.SODIUM_BICARBONATE, Dose.SODIUM_CARBONATE, Dose.AMMONIUM_CHLORIDE)) {
            double grams = d.grams(compound);
            if (grams > 0) {
                parts.add(texts.text("state.dose", grams, dose(compound)));
            }
        }
        if (d.change() > 0 && f.chlorinated()) {
            rest.add(texts.text(d.neutralise() ? "state.neutralised" : "state.raw"));
        }
        if (f.seen().power()) {
            rest.add(texts.text("state.air." + d.air().name().toLowerCase(Locale.ROOT)));
            devices(d, f, rest);
        } else {
            rest.add(texts.text(d.air() == Air.SPARE ? "state.spareAlone" : "state.noPower"));
        }
        arrivals(d, f, rest);
        if (d.filter() != FilterCare.LEAVE) {
            rest.add(texts.text("state.filter." + d.filter().name().toLowerCase(Locale.ROOT)));
        }
        if (d.helpers() != FollowUp.NONE) {
            rest.add(texts.text("state.follow." + d.helpers().name().toLowerCase(Locale.ROOT)));
        }
        return new Statement(sentence(parts), String.join(" ", rest));
    }

    /** What is done about pump and heater, where it is not what anybody would expect. */
    private void devices(Decision d, VisitFacts f, List<String> rest) {
        if (!d.pump() || !f.seen().pump()) {
            rest.add(texts.text(d.pump() ? "state.pumpOn" : "state.pumpOff"));
        }
        if (!d.heater() || !f.seen().heater()) {
            rest.add(texts.text(d.heater() ? "state.heaterOn" : "state.heaterOff"));
        }
    }

    private void arrivals(Decision d, VisitFacts f, List<String> rest) {
        if (d.stock() > 0) {
            rest.add(texts.text("state.stock", f.joining()));
        }
        if (d.ripeMedia() > 0) {
            rest.add(texts.text("state.media", Math.rint(100 * d.ripeMedia())));
        }
    }

    private String feed(Decision d, VisitFacts f) {
        String until = day(f.nextMinute(), f.visit().minute());
        return d.feed() == 0
                ? texts.text("state.noFeed", until)
                : f.daysToNext() < 1
                        ? texts.text("state.feedShort", grams(d.feed() * f.rationG()), until)
                        : texts.text("state.feed", grams(d.feed() * f.rationG()), until);
    }

    /** Grams as a kitchen scale shows them: one decimal under ten, whole from there on. */
    public String grams(double grams) {
        return grams < 10 ? texts.number(Math.rint(grams * 10) / 10) : texts.number(Math.rint(grams));
    }

    public String dose(Dose compound) {
        return texts.text("dose." + compound.name().toLowerCase(Locale.ROOT));
    }

    private static String sentence(List<String> parts) {
        String joined = String.join(", ", parts);
        return joined.substring(0, 1).toUpperCase(Locale.ROOT) + joined.substring(1) + ".";
    }

    /**
     * What somebody did who came in the learner's place: when, who, what was read and what was done. Empty for any other
     * visit.
     */
    public String stoodIn(VisitRecord v) {
        if (!v.actor().standsIn() || v.decision() == null) {
            return "";
        }
        List<String> read = new ArrayList<>();
        v.written().forEach(w -> read.add(pad(w.pad()) + " " + written(w)));
        return texts.text(
                "stoodIn." + v.actor().name().toLowerCase(Locale.ROOT),
                clock(v.minute()),
                read.isEmpty() ? texts.text("stoodIn.nothing") : String.join(", ", read),
                option(v.decision(), v.seen().alive() > 0));
    }

    /** An option in a few words, or what doing nothing is where there are no fish to feed. */
    public String option(Decision d, boolean fishIn) {
        return fishIn ? why.decision(d) : why.decisionWithoutFish(d);
    }

    public String sureness(Prediction.Sureness sureness) {
        return texts.text("sure." + sureness.name().toLowerCase(Locale.ROOT));
    }

    public String word(Verdict.Word word) {
        return texts.text("word." + word.name().toLowerCase(Locale.ROOT));
    }

    /** What was foreseen: "nitrite 2, fairly sure". */
    public String prediction(Prediction p) {
        return texts.text("foreseen", pad(p.pad()), block(p.pad(), p.block()), sureness(p.sureness()));
    }
}
