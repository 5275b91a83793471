package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.text.DrillWords;

/**
 * How well the pads of one visit were matched: the written stop against where the pad's colour truly lay. One block off is
 * human; two are an error.
 */
record Readings(int right, int all, List<Written> off) {
    private static final double HUMAN_BLOCKS = 1.0;

    Readings {
        off = List.copyOf(off);
    }

    static Readings of(DrillRun run, VisitRecord visit) {
        int right = 0;
        List<Written> off = new ArrayList<>();
        for (Written w : visit.written()) {
            DippedStrip strip = run.strip(w.pad(), w.strip());
            if (strip != null && Math.abs(w.stop() / 2.0 - strip.position(w.pad())) <= HUMAN_BLOCKS) {
                right++;
            } else {
                off.add(w);
            }
        }
        return new Readings(right, visit.written().size(), off);
    }

    String said(DrillWords words) {
        if (all == 0) {
            return words.texts().text("win.nothingRead");
        }
        return off.isEmpty()
                ? words.texts().text("win.allRead")
                : words.texts().text("win.offRead", words.pad(off.get(0).pad()));
    }
}
