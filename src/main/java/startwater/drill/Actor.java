package startwater.drill;

/** Who acted at a visit of the log. */
public enum Actor {
    /** The learner was asked and decided. */
    LEARNER,
    /** Nobody decided: the orders of the visit before stood. */
    ORDERS,
    /** Somebody looked in between two visits, as asked, and acted by the standing rules. */
    HELPER,
    /** Somebody who knows came, tested without misreading with a kit of their own, and acted by the standing rules. */
    EXPERT;

    /** Somebody other than the learner who tests and acts. */
    public boolean standsIn() {
        return this == HELPER || this == EXPERT;
    }
}
