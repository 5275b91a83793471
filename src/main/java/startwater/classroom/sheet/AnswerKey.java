package startwater.classroom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.page.Html;
import startwater.score.Case;
import startwater.score.Policies;
import startwater.score.PolicyPlayer;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Texts;

/**
 * What each option is worth at the decisions of a drill, on one hidden tank, where the standing rules were kept before. A
 * class that did otherwise stands elsewhere: the key shows the size of things, not the answer to every log.
 */
public final class AnswerKey {
    private static final int MOST_OPTIONS = 6;

    private final Scenario drill;
    private final List<Visit> visits;

    /** One decision. */
    private record Visit(int number, VisitRecord record, Verdict verdict) {}

    private AnswerKey(Scenario drill, List<Visit> visits) {
        this.drill = drill;
        this.visits = visits;
    }

    /**
     * Works the key out; takes about half a second a decision.
     *
     * @param variant which hidden tank
     * @param judge gives the verdict of a case
     */
    public static AnswerKey of(Scenario drill, long variant, Function<Case, Verdict> judge) {
        DrillRun run = PolicyPlayer.play(drill, Policies.CAREFUL, variant, DrillRun.Pace.LEARNER);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < run.past().size(); i++) {
            VisitRecord visit = run.past().visits().get(i);
            if (visit.asked() && visit.decision() != null) {
                visits.add(new Visit(
                        visits.size() + 1,
                        visit,
                        judge.apply(new Case(drill, run.past().upTo(i)))));
            }
        }
        return new AnswerKey(drill, List.copyOf(visits));
    }

    /** Adds the key to a page. @param texts of the class */
    public void write(Html html, Texts texts) {
        DrillWords words = new DrillWords(texts);
        html.raw("<section class=\"answers\">").tag("h2", texts.text("key.title"));
        html.tag("p", "quiet", texts.text("key.how"));
        for (Visit visit : visits) {
            String read = visit.record().written().stream()
                    .map(w -> words.pad(w.pad()) + " " + words.written(w))
                    .reduce((a, b) -> a + ", " + b)
                    .orElse("–");
            html.raw("<div class=\"card\">")
                    .tag(
                            "h3",
                            texts.text(
                                    "key.decision",
                                    visit.number(),
                                    words.clock(visit.record().minute())))
                    .tag("p", texts.text("key.read", read))
                    .raw("<table>");
            html.row("th", texts.text("key.option"), texts.text("key.deaths"), texts.text("key.loss"));
            visit.verdict().options().stream()
                    .limit(MOST_OPTIONS)
                    .forEach(o -> html.row(
                            "td",
                            words.option(o.decision(), drill.fish() != null)
                                    + (o.rules() ? " " + texts.text("key.rules") : ""),
                            words.why().deaths(o.deaths()),
                            texts.decimals(o.loss(), 2)));
            html.raw("</table></div>");
        }
        html.raw("</section>");
    }
}
