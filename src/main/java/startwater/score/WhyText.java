package startwater.score;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Scenario;
import startwater.drill.Scenario.Happening;
import startwater.fish.Stressor;
import startwater.score.Verdict.Variable;
import startwater.strip.Pad;

/** Turns lines of an explanation, decisions and counts into words of a language. */
public final class WhyText {
    /** Lines that begin with a number of fish. */
    private static final Set<String> COUNTED = Set.of("costs.best.deaths", "costs.deaths", "costs.where");

    private final Locale locale;
    private final ResourceBundle words;

    private WhyText(Locale locale) {
        this.locale = locale;
        this.words = ResourceBundle.getBundle(
                "startwater.score.Why",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    public static WhyText in(Locale locale) {
        return new WhyText(locale);
    }

    /** One line as a sentence or two. */
    public String format(Verdict.Line line) {
        Object[] spoken = line.parameters().stream().map(this::spoken).toArray();
        String key = line.key();
        if (COUNTED.contains(key) && spoken.length > 0 && line.parameters().get(0) instanceof Double deaths) {
            spoken[0] = deaths(deaths);
            if (key.equals("costs.where") && line.parameters().get(1) instanceof Double here) {
                spoken[1] = deaths(here);
            }
            if (key.equals("costs.deaths") && line.parameters().get(4) instanceof Double best) {
                spoken[4] = deaths(best);
            }
        }
        return message(key, spoken);
    }

    private String message(String key, Object... parameters) {
        return new MessageFormat(words.getString(key), locale).format(parameters);
    }

    private Object spoken(Object parameter) {
        if (parameter instanceof Double number) {
            return number(number);
        }
        if (parameter instanceof Decision decision) {
            return decision(decision);
        }
        if (parameter instanceof Verdict.WithoutFish unfed) {
            return decisionWithoutFish(unfed.decision());
        }
        if (parameter instanceof Verdict.Fish fish) {
            return deaths(fish.count());
        }
        if (parameter instanceof Happening.Kind kind) {
            return words.getString("fails." + kind.name().toLowerCase(Locale.ROOT));
        }
        if (parameter instanceof Variable variable) {
            return words.getString("variable." + variable.name().toLowerCase(Locale.ROOT));
        }
        if (parameter instanceof Pad pad) {
            return words.getString("pad." + pad.name().toLowerCase(Locale.ROOT));
        }
        if (parameter instanceof Component component) {
            return words.getString("component." + component.name().toLowerCase(Locale.ROOT));
        }
        if (parameter instanceof Stressor stressor) {
            return words.getString("cause." + stressor.name().toLowerCase(Locale.ROOT));
        }
        return parameter;
    }

    /** A cause of death in words. */
    public String cause(Stressor stressor) {
        return spoken(stressor).toString();
    }

    /** A variable in words. */
    public String variable(Variable variable) {
        return spoken(variable).toString();
    }

    /** A standing rule in words, as it holds for the fish of a drill. @param number 1 to 15 */
    public String rule(int number, Scenario drill) {
        String taught = "rule." + number + ".taught";
        Object[] told = RuleLevels.of(drill).told("", "");
        return message(
                words.containsKey(taught) ? taught : "rule." + number,
                Arrays.stream(told).map(this::spoken).toArray());
    }

    /** A slip of unit in words. @param exact the right number with its unit, as it is to be read */
    public String slip(UnitSlip slip, String exact) {
        return message("slip." + slip.name().toLowerCase(Locale.ROOT), exact);
    }

    /** A part of a loss in words. */
    public String component(Component component) {
        return spoken(component).toString();
    }

    /** A number with as many digits as it deserves: two figures under 10, whole from 10 on. */
    public String number(double value) {
        if (Double.isNaN(value)) {
            return "?";
        }
        double size = Math.abs(value);
        String pattern = size >= 10 ? "#,##0" : size >= 1 ? "0.#" : size >= 0.1 ? "0.##" : "0.###";
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(locale)).format(value);
    }

    /** Expected deaths as people count: "4 fish", "a fish in 3 of ten such tanks", "hardly a fish". */
    public String deaths(double fish) {
        if (fish < Explainer.HARDLY_A_FISH) {
            return words.getString("deaths.hardly");
        }
        if (fish < 0.95) {
            return message("deaths.tenths", (int) Math.max(1, Math.rint(10 * fish)));
        }
        return message("deaths.fish", (int) Math.rint(fish));
    }

    /** A decision in a few words: "half feed, change 25 %, 364 g salt". */
    public String decision(Decision d) {
        List<String> parts = new ArrayList<>();
        parts.add(
                d.feed() == 0
                        ? words.getString("do.feed.none")
                        : d.feed() == 0.5
                                ? words.getString("do.feed.half")
                                : d.feed() == 1
                                        ? words.getString("do.feed.full")
                                        : message("do.feed.share", number(100 * d.feed())));
        if (d.change() > 0) {
            parts.add(message(d.neutralise() ? "do.change" : "do.change.raw", number(100 * d.change())));
        }
        grams(parts, "do.salt", d.saltG());
        grams(parts, "do.buffer", d.bicarbonateG());
        grams(parts, "do.soda", d.sodaAshG());
        grams(parts, "do.ammonium", d.ammoniumChlorideG());
        if (d.air() == Air.OFF) {
            parts.add(words.getString("do.air.off"));
        }
        if (d.air() == Air.SPARE) {
            parts.add(words.getString("do.air.spare"));
        }
        if (!d.pump()) {
            parts.add(words.getString("do.pump.off"));
        }
        if (!d.heater()) {
            parts.add(words.getString("do.heater.off"));
        }
        share(parts, "do.stock", d.stock());
        share(parts, "do.media", d.ripeMedia());
        if (d.filter() != FilterCare.LEAVE) {
            parts.add(words.getString("do.filter." + d.filter().name().toLowerCase(Locale.ROOT)));
        }
        if (d.helpers() != FollowUp.NONE) {
            parts.add(words.getString("do.follow." + d.helpers().name().toLowerCase(Locale.ROOT)));
        }
        return String.join(", ", parts);
    }

    /** The same without the feed, for a system without fish; those that come in now are fed. */
    public String decisionWithoutFish(Decision d) {
        if (d.stock() > 0) {
            return decision(d);
        }
        String all = decision(d.withFeed(0));
        String none = words.getString("do.feed.none");
        return all.equals(none) ? words.getString("do.nothing") : all.substring(none.length() + 2);
    }

    private void share(List<String> parts, String key, double share) {
        if (share > 0) {
            parts.add(message(key, number(100 * share)));
        }
    }

    private void grams(List<String> parts, String key, double grams) {
        if (grams > 0) {
            parts.add(message(key, number(grams)));
        }
    }
}
