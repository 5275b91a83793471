package startwater.score;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.fish.Stressor;
import startwater.score.Verdict.Band;
import startwater.score.Verdict.Line;
import startwater.score.Verdict.Line.Severity;
import startwater.score.Verdict.Variable;
import startwater.strip.Pad;
import startwater.water.UnionisedAmmonia;

/**
 * Explains a verdict by computing: what the numbers said, what the choice does, what it costs, the rule. A line is made
 * only when its numbers hold on this case; the words live in the language files.
 */
final class Explainer {
    /** Fewer deaths than this, fish, are hardly one. */
    static final double HARDLY_A_FISH = 0.05;

    /** Where less than this share of them die, hardly any do. */
    private static final double HARDLY_ANY = 0.05;

    private static final double LOW_ALKALINITY = 80;
    private static final double DAYS_WORTH_TELLING = 10;
    private static final int RULES_SHOWN = 3;

    private final Scored scored;
    private final Verdict verdict;
    private final Paths paths;
    private final Notebook book;
    private final @Nullable View view;
    private final List<Line> lines = new ArrayList<>();

    private Explainer(Scored scored, Verdict verdict, Paths paths, @Nullable View view) {
        this.scored = scored;
        this.verdict = verdict;
        this.paths = paths;
        this.book = scored.book();
        this.view = view;
    }

    static List<Line> lines(Scored scored, Verdict verdict, Paths paths, @Nullable View view) {
        Explainer e = new Explainer(scored, verdict, paths, view);
        e.credit();
        e.said();
        e.does();
        e.mayFail();
        e.costs();
        e.arguable();
        e.tests();
        e.rules();
        return List.copyOf(e.lines);
    }

    private void say(String key, Severity severity, Object... parameters) {
        lines.add(line(book, key, severity, parameters));
    }

    /** A sentence as it is said of the system that a book tells of. */
    static Line line(Notebook book, String key, Severity severity, Object... parameters) {
        return new Line(key, severity, spoken(List.of(parameters), book.fishIn()));
    }

    /** Decisions in a system without fish are said without the feed. */
    private static List<Object> spoken(List<Object> parameters, boolean fishIn) {
        return parameters.stream()
                .map(p -> !fishIn && p instanceof Decision d ? (Object) new Verdict.WithoutFish(d) : p)
                .toList();
    }

    private void credit() {
        if (!verdict.credited()) {
            say(
                    "credit.none",
                    Severity.HARM,
                    scored.belief().oddReadings(),
                    scored.belief().readings());
        }
    }

    private void said() {
        if (scored.belief().log().last().written().isEmpty()) {
            say("said.nothing", Severity.HARM);
        }
        if (SilentLog.is(scored.belief().scenario(), scored.belief().log())) {
            say("said.silent", Severity.HARM);
        }
        if (!book.fishIn()) {
            saidFishless();
            saidNursery();
            return;
        }
        boolean nitriteFirst = verdict.decisive().variable() == Variable.EFFECTIVE_NITRITE;
        if (nitriteFirst) {
            saidNitrite();
            saidAmmonia();
        } else {
            saidAmmonia();
            saidNitrite();
        }
        saidOxygen();
        saidAlkalinity();
        saidNursery();
    }

    private void saidFishless() {
        double tan = book.value(Pad.AMMONIA);
        double nitrite = book.value(Pad.NITRITE);
        if (tan < 1 && nitrite >= 1) {
            say("said.fishless.halfway", Severity.FACT, tan, nitrite);
        } else if (tan < 1 && nitrite < 1) {
            say("said.fishless.both", Severity.FACT, tan, nitrite);
        } else if (tan >= 1 && !Double.isNaN(nitrite)) {
            say("said.fishless.waiting", Severity.FACT, tan, nitrite);
        }
        if (tan > 4) {
            say("said.fishless.over", Severity.HARM, tan, 4);
        }
        if (book.stocking().passes() > 0) {
            say(
                    "said.proof",
                    Severity.FACT,
                    book.stocking().passes(),
                    100 * book.stocking().provedShare());
        }
    }

    private void saidNursery() {
        Stocking stocking = book.stocking();
        if (stocking.lostBeside() > 0) {
            say("said.nursery", Severity.HARM, stocking.lostBeside(), stocking.toCome());
        }
    }

    private void saidAmmonia() {
        double toxic = book.toxicAmmonia();
        if (Double.isNaN(toxic)) {
            return;
        }
        double tan = book.value(Pad.AMMONIA);
        double ph = book.value(Pad.PH);
        double share = UnionisedAmmonia.fraction(Math.min(10, ph), book.temperatureC());
        double guidance = paths.guidance(Variable.TOXIC_AMMONIA);
        String key = toxic > guidance ? "said.ammonia.harms" : "said.ammonia.under";
        say(
                key,
                toxic > guidance ? Severity.HARM : Severity.FACT,
                tan,
                ph,
                book.temperatureC(),
                100 * share,
                toxic,
                guidance);
    }

    private void saidNitrite() {
        double nitrite = book.value(Pad.NITRITE);
        if (!(nitrite >= 0.1)) {
            return;
        }
        double wanted = Notebook.chlorideWanted(nitrite);
        double chloride = book.value(Pad.CHLORIDE);
        if (Double.isNaN(chloride)) {
            double source = book.scenario().source().chlorideMgPerL();
            if (source < 0.9 * wanted) {
                say("said.nitrite.unread", Severity.HARM, nitrite, source, wanted);
            }
        } else if (chloride < 0.9 * wanted) {
            say("said.nitrite.short", Severity.HARM, nitrite, chloride, wanted);
        } else {
            say("said.nitrite.covered", Severity.FACT, nitrite, chloride, wanted);
        }
    }

    private void saidOxygen() {
        double guidance = paths.guidance(Variable.OXYGEN);
        if (!book.airSeenOn()) {
            say("said.air.off", Severity.HARM);
        } else if (book.oxygenMgPerL() < guidance + 1) {
            say("said.oxygen.low", Severity.HARM, book.oxygenMgPerL(), guidance);
        }
    }

    private void saidAlkalinity() {
        double alkalinity = book.value(Pad.ALKALINITY);
        if (alkalinity < LOW_ALKALINITY) {
            say("said.alkalinity.low", Severity.HARM, alkalinity, LOW_ALKALINITY);
            return;
        }
        double now = paths.alkalinityNow().middle();
        double fall = paths.alkalinityFallPerDay();
        double days = (now - LOW_ALKALINITY) / fall;
        if (fall > 1 && days > 0 && days < DAYS_WORTH_TELLING) {
            say("said.alkalinity.days", Severity.FACT, now, fall, LOW_ALKALINITY, days);
        }
    }

    private void does() {
        Variable v = verdict.decisive().variable();
        if (v == Variable.TOTAL_AMMONIA || v == Variable.OXYGEN) {
            return;
        }
        double days = paths.daysToHarm(v);
        Band own = paths.peak(v, false);
        Band best = paths.peak(v, true);
        double guidance = paths.guidance(v);
        if (Double.isNaN(days)) {
            say("does.safe", Severity.OWN, v, own.middle(), guidance);
        } else if (days < 0.2) {
            say("does.already", Severity.OWN, v, own.middle(), own.low(), own.high(), best.middle(), guidance);
        } else {
            say("does.later", Severity.OWN, v, days, own.middle(), own.low(), own.high(), best.middle(), guidance);
        }
    }

    /** What may fail before somebody acts again: it is reckoned with, and nobody can know whether it comes. */
    private void mayFail() {
        for (Future f : scored.rollout().futures()) {
            if (f.failure() != null) {
                say("does.mayFail", Severity.FACT, f.failure(), 100 * f.chance());
            }
        }
    }

    private void costs() {
        Verdict.Option own = verdict.chosen();
        Verdict.Option best = verdict.best();
        if (verdict.own() == 0 || verdict.regret() <= Math.max(2 * verdict.standardError(), 0.05)) {
            if (own.deaths() >= HARDLY_A_FISH) {
                say("costs.best.deaths", Severity.BEST, own.deaths(), verdict.stock(), verdict.days());
                where(own);
            } else {
                say("costs.best", Severity.BEST);
            }
            return;
        }
        if (own.deaths() >= HARDLY_A_FISH && own.deaths() > best.deaths() + HARDLY_A_FISH / 2) {
            say(
                    "costs.deaths",
                    Severity.OWN,
                    own.deaths(),
                    verdict.stock(),
                    verdict.days(),
                    best.decision(),
                    best.deaths());
            where(own);
            cause(own, best);
        }
        part(own, best);
    }

    /** In which of two waters they die, where some or all do so in the nursery. */
    private void where(Verdict.Option own) {
        double here = own.deaths() - own.deathsBeside();
        if (own.deathsBeside() >= HARDLY_A_FISH) {
            if (here >= HARDLY_A_FISH && here > HARDLY_ANY * own.deaths()) {
                say("costs.where", Severity.FACT, own.deathsBeside(), here);
            } else {
                say("costs.nursery", Severity.FACT, 100 * own.deathsBeside() / own.deaths());
            }
        }
    }

    private void cause(Verdict.Option own, Verdict.Option best) {
        Stressor main = Stressor.AMMONIA;
        for (Stressor s : Stressor.values()) {
            if (own.deathsBy(s) - best.deathsBy(s) > own.deathsBy(main) - best.deathsBy(main)) {
                main = s;
            }
        }
        double share = own.deathsBy(main) / own.deaths();
        if (share > 0.6) {
            say("costs.cause", Severity.FACT, main, 100 * share);
        }
    }

    /** The part beside deaths that costs most over the best option, if it costs anything. */
    private void part(Verdict.Option own, Verdict.Option best) {
        Component main = Component.GROWTH;
        for (Component c : Component.values()) {
            if (c != Component.DEATHS && own.part(c) - best.part(c) > own.part(main) - best.part(main)) {
                main = c;
            }
        }
        double more = own.part(main) - best.part(main);
        if (more >= 0.05) {
            say("costs.part", Severity.OWN, main, own.part(main), best.part(main), best.decision());
        }
    }

    /** Another reasonable view accepts the choice: which one. */
    private void arguable() {
        if (view != null) {
            say(
                    "view." + view.name().toLowerCase(Locale.ROOT),
                    Severity.FACT,
                    verdict.best().decision());
        }
    }

    /** What testing would have been worth: a second strip, or a pad that was left out. */
    private void tests() {
        Verdict.Information information = verdict.information();
        Verdict.PadWorth telling = information.mostTelling();
        if (information.retest()) {
            say("test.again", Severity.HARM, information.strip(), information.price());
        }
        if (telling != null && !telling.read() && telling.worth() > information.price()) {
            say("test.skipped", Severity.HARM, telling.pad(), telling.worth(), information.price());
        }
    }

    private void rules() {
        StandingRules.Ruling ruling = new StandingRules().ruling(book);
        RuleLevels levels = RuleLevels.of(book.scenario());
        Set<Integer> numbers =
                new LinkedHashSet<>(ruling.rules().stream().limit(RULES_SHOWN).toList());
        if (verdict.chosen().decision().filter() != Decision.FilterCare.LEAVE) {
            numbers.add(13);
        }
        if (verdict.chosen().decision().stock() > 0) {
            numbers.add(14);
        }
        if (ruling.rules().contains(10)) {
            numbers.add(10);
        }
        for (int number : numbers) {
            say("rule." + number, Severity.RULE, levels.told(ruling.decision().saltG(), ruling.decision()));
        }
    }
}
