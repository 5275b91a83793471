package startwater.score;

import java.util.List;
import startwater.drill.Decision;

/** A few options followed on a few waters, without the search for more of them. */
final class HandScored {
    private final Scored scored;

    private HandScored(Scored scored) {
        this.scored = scored;
    }

    /** These options, the first the learner's own. */
    static HandScored of(Belief belief, Decision... options) {
        Notebook book = SmallBelief.book(belief);
        Rollout rollout = new Rollout(belief, book);
        List<Decision> all = List.of(options);
        return new HandScored(new Scored(belief, book, rollout, all, 0, new LossTable(belief, rollout).of(all)));
    }

    /** The same with losses put by hand. */
    HandScored with(Losses losses) {
        return new HandScored(
                new Scored(scored.belief(), scored.book(), scored.rollout(), scored.options(), scored.own(), losses));
    }

    Scored scored() {
        return scored;
    }

    Paths paths(int own, int best) {
        return Paths.of(scored, own, best);
    }
}
