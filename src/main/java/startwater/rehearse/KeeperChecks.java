package startwater.rehearse;

import java.util.List;
import startwater.drill.Scenario;

/** Who is there, and what is on the shelf. */
final class KeeperChecks {
    /** Longer than this nobody leaves fish in a filter that is not ripe, d (common practice, no source). */
    private static final double LONG_DAYS = 2;
    /** Longer than this fish of any size should not be alone, d; small fry less (common practice, no source). */
    private static final double MOST_DAYS = 7;

    private static final double MOST_DAYS_FRY = 2;
    private static final double FRY_G = 5;
    private static final double LOW_ALKALINITY_MG_PER_L = 80;

    private final OwnSystem own;
    private final List<Finding> found;

    KeeperChecks(OwnSystem own, List<Finding> found) {
        this.own = own;
        this.found = found;
    }

    void check() {
        if (own.visits().isEmpty()) {
            found.add(Finding.assumed(Entry.VISITS, "visits"));
        }
        away();
        shelf();
    }

    private void away() {
        Double mass = own.stock().massG();
        boolean fry = mass != null && mass < FRY_G;
        double most = fry ? MOST_DAYS_FRY : MOST_DAYS;
        for (Scenario.Away away : own.away()) {
            double days = away.toDay() - away.fromDay();
            if (away.fromDay() < 1) {
                found.add(Finding.refuse(Entry.AWAY, "awayAtStart"));
            } else if (own.starting() == Starting.FISH_IN && days > most) {
                found.add(Finding.refuse(Entry.AWAY, "awayTooLong", away.fromDay(), days, most));
            } else if (own.starting() == Starting.FISH_IN && days >= LONG_DAYS) {
                found.add(Finding.warn(Entry.AWAY, "awayLong", away.fromDay(), days));
            }
        }
    }

    private void shelf() {
        OwnSystem.Shelf shelf = own.shelf();
        Integer strips = shelf.strips();
        if (strips == null) {
            found.add(Finding.assumed(Entry.STRIPS, "stripsUnknown"));
        } else if (strips == 0) {
            found.add(Finding.refuse(Entry.STRIPS, "noStrips"));
        }
        Double chlorine = own.tap().chlorineMgPerL();
        Double neutraliser = shelf.neutraliserG();
        if (chlorine != null && chlorine > 0 && neutraliser != null && neutraliser == 0) {
            found.add(Finding.refuse(Entry.NEUTRALISER, "noNeutraliser", chlorine));
        }
        Double alkalinity = own.tap().alkalinityMgPerL();
        Double bicarbonate = shelf.bicarbonateG();
        if (alkalinity != null && alkalinity < LOW_ALKALINITY_MG_PER_L && bicarbonate != null && bicarbonate == 0) {
            found.add(Finding.warn(Entry.BICARBONATE, "noBicarbonate", alkalinity));
        }
        Double ammonium = shelf.ammoniumG();
        if (own.starting() != Starting.FISH_IN && ammonium != null && ammonium == 0) {
            found.add(Finding.refuse(Entry.AMMONIUM, "noAmmonium"));
        }
        Double ripe = shelf.ripeMediaL();
        if (own.starting() == Starting.RIPE_MEDIA && (ripe == null || ripe == 0)) {
            found.add(Finding.refuse(Entry.RIPE_MEDIA, "noRipeMedia"));
        }
    }
}
