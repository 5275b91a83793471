package startwater.rehearse;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;

/** What the outlook says against the form: a shelf too small, days away that hurt, a move too early, fish that die. */
public final class OutlookChecks {
    private static final double BUSY = 0.5;
    private static final double UNLIKELY = 0.5;
    private static final double SAFE = 0.9;
    /** More than this share of the fish, in the middle tank, is more than a start-up should cost (common practice, no source). */
    private static final double HIGH_LOSS = 0.05;

    private final OwnSystem own;
    private final Outlook outlook;
    private final List<Finding> found = new ArrayList<>();

    private OutlookChecks(OwnSystem own, Outlook outlook) {
        this.own = own;
        this.outlook = outlook;
    }

    /** The findings, weightiest first. */
    public static List<Finding> of(OwnSystem own, Outlook outlook) {
        OutlookChecks checks = new OutlookChecks(own, outlook);
        checks.ready();
        checks.loss();
        checks.away();
        checks.shelf();
        return List.copyOf(checks.found);
    }

    private void ready() {
        double chance = outlook.readyBy(outlook.days());
        if (chance < UNLIKELY) {
            found.add(Finding.warn(Entry.MEDIA_LITRES, "neverReady", Math.rint(100 * chance), outlook.days()));
        }
        Integer move = own.moveDay();
        if (move == null) {
            return;
        }
        Outlook.Second second = outlook.second();
        if (second != null) {
            if (second.latestStart() == null) {
                found.add(Finding.warn(
                        Entry.MOVE_DAY,
                        "secondTooLate",
                        move,
                        Math.ceil(Math.min(second.days(), second.ready().high()))));
            }
        } else if (outlook.readyBy(move) < SAFE) {
            found.add(Finding.warn(Entry.MOVE_DAY, "moveEarly", move, Math.rint(100 * outlook.readyBy(move))));
        }
    }

    private void loss() {
        if (outlook.fishIn() && outlook.deaths().middle() > HIGH_LOSS * outlook.fish()) {
            found.add(Finding.warn(
                    Entry.COUNT, "highLoss", Math.rint(outlook.deaths().middle()), outlook.fish()));
        }
    }

    private void away() {
        for (Scenario.Away away : own.away()) {
            double most = 0;
            for (int day = (int) away.fromDay() - 1;
                    day < away.toDay() && day < outlook.workShare().size();
                    day++) {
                most = Math.max(most, outlook.workShare().get(Math.max(0, day)));
            }
            if (most >= BUSY) {
                boolean one = away.toDay() - away.fromDay() <= 1;
                found.add(
                        one
                                ? Finding.warn(Entry.AWAY, "awayBusyDay", away.fromDay(), Math.rint(100 * most))
                                : Finding.warn(
                                        Entry.AWAY,
                                        "awayBusy",
                                        away.fromDay(),
                                        away.toDay() - 1,
                                        Math.rint(100 * most)));
            }
        }
    }

    private void shelf() {
        OwnSystem.Shelf shelf = own.shelf();
        few(shelf.strips(), outlook.strips(), Entry.STRIPS);
        few(shelf.chlorideStrips(), outlook.chlorideStrips(), Entry.CHLORIDE_STRIPS);
        few(shelf.saltG(), outlook.saltG(), Entry.SALT);
        few(shelf.bicarbonateG(), outlook.bicarbonateG(), Entry.BICARBONATE);
        few(shelf.neutraliserG(), outlook.neutraliserG(), Entry.NEUTRALISER);
        few(shelf.ammoniumG(), outlook.ammoniumG(), Entry.AMMONIUM);
    }

    private void few(@Nullable Number there, Spread needed, Entry entry) {
        if (there != null && there.doubleValue() < Math.floor(needed.high())) {
            boolean count = entry == Entry.STRIPS || entry == Entry.CHLORIDE_STRIPS;
            Measure measure = count ? Measure.COUNT : Measure.MASS;
            found.add(Finding.warn(
                    entry,
                    count ? "fewPieces" : "fewGrams",
                    new Amount(there.doubleValue(), measure),
                    new Amount(Math.ceil(needed.high()), measure)));
        }
    }
}
