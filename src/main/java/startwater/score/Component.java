package startwater.score;

/** The parts of a loss, each in % of the stock. */
public enum Component {
    DEATHS,
    GROWTH,
    WASTE,
    STRESS,
    DELAY,
    WATER,
    JOBS,
    SALT,
    SHOCK
}
