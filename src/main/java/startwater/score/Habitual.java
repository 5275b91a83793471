package startwater.score;

import startwater.drill.Decision;
import startwater.score.Verdict.Line;
import startwater.score.Verdict.Line.Severity;

/**
 * A choice kept up day after day.
 *
 * @param days for how long
 * @param regret expected loss over that of the best habit, % of the stock
 * @param deaths expected deaths, fish
 * @param bestDeaths expected deaths under the best habit, fish
 * @param best the option that is best when kept up
 * @param word sound, costly or dangerous
 * @param line what it comes to, as a sentence
 */
public record Habitual(
        int days, double regret, double deaths, double bestDeaths, Decision best, Verdict.Word word, Line line) {
    private static final int DAYS = 3;

    static Habitual of(Case c, Care care) {
        return of(Scored.of(c, Belief.of(c.scenario(), c.log(), care.waters()), DAYS));
    }

    /** @param scored options kept up for three days */
    static Habitual of(Scored scored) {
        Losses losses = scored.losses();
        int best = losses.best();
        double perPercent = scored.stock() / 100;
        double regret = losses.regret(scored.own());
        double deaths = losses.mean(scored.own(), Component.DEATHS) * perPercent;
        double bestDeaths = losses.mean(best, Component.DEATHS) * perPercent;
        Decision bestHabit = scored.options().get(best);
        Line line = line(scored, regret, deaths, bestDeaths, bestHabit);
        Verdict.Word word = Judge.word(scored.deathsUp(), scored.over(regret));
        return new Habitual(DAYS, regret, deaths, bestDeaths, bestHabit, word, line);
    }

    private static Line line(Scored scored, double regret, double deaths, double bestDeaths, Decision best) {
        if (scored.over(regret) == 0) {
            return deaths >= Explainer.HARDLY_A_FISH
                    ? line(scored, "kept.best.deaths", Severity.BEST, DAYS, new Verdict.Fish(deaths))
                    : line(scored, "kept.best", Severity.BEST, DAYS);
        }
        if (deaths >= Explainer.HARDLY_A_FISH && deaths > bestDeaths + Explainer.HARDLY_A_FISH / 2) {
            return line(
                    scored,
                    "kept.deaths",
                    Severity.HARM,
                    DAYS,
                    new Verdict.Fish(deaths),
                    best,
                    new Verdict.Fish(bestDeaths));
        }
        return line(scored, "kept.costs", Severity.OWN, DAYS, regret, best);
    }

    private static Line line(Scored scored, String key, Severity severity, Object... parameters) {
        return Explainer.line(scored.book(), key, severity, parameters);
    }
}
