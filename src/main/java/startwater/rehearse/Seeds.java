package startwater.rehearse;

import java.util.Map;
import startwater.drill.Prior;
import startwater.drill.Unknown;

/** Bacteria at the start, as shares of what the media can hold. */
final class Seeds {
    /** Ripe media never make a new filter riper than this (common practice, no source: the move costs some). */
    private static final double MOST_SHARE = 0.25;
    /** The reach within which a prior of a drill must stay, standard deviations. */
    private static final double FAR = 3;

    private Seeds() {}

    /** Puts the seeds of a system among its unknowns. @param area of its media, m2 */
    static void put(OwnSystem own, Prior.LogNormal area, Map<Unknown, Prior> unknowns) {
        Double ripe = own.shelf().ripeMediaL();
        if (own.starting() == Starting.RIPE_MEDIA && ripe != null && ripe > 0) {
            Facts.Fact alive = Facts.of("ripe.alive");
            double share = Math.min(MOST_SHARE, alive.value() * ripeShare(own, area, ripe));
            Prior.LogNormal hung = within(share, StrictMath.hypot(alive.sd(), area.sd()));
            unknowns.put(Unknown.AOB_SEED, hung);
            unknowns.put(Unknown.NOB_SEED, hung);
        } else {
            unknowns.put(Unknown.AOB_SEED, unseeded(Unknown.AOB_SEED, area));
            unknowns.put(Unknown.NOB_SEED, unseeded(Unknown.NOB_SEED, area));
        }
    }

    /** Ripe litres over the litres of the filter; where those are not told, by area as if of the same kind. */
    private static double ripeShare(OwnSystem own, Prior.LogNormal area, double ripeL) {
        Double litres = own.vessel().litres();
        if (litres != null && litres > 0) {
            return ripeL / litres;
        }
        String kind = own.vessel().media() == null
                ? "static-plastic"
                : own.vessel().media().id();
        return Facts.of("media." + kind).value() * ripeL / 1000 / area.median();
    }

    private static Prior.LogNormal unseeded(Unknown unknown, Prior.LogNormal area) {
        Prior.LogNormal usual = (Prior.LogNormal) java.util.Objects.requireNonNull(unknown.usual());
        return within(usual.median(), StrictMath.hypot(usual.sd(), area.sd()));
    }

    /** Narrow enough that its far end is not over 1. */
    private static Prior.LogNormal within(double median, double sd) {
        double most = -StrictMath.log(median) / FAR * 0.999;
        return new Prior.LogNormal(OwnScenario.rounded(median), OwnScenario.rounded(Math.min(sd, most)));
    }
}
