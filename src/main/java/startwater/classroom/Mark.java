package startwater.classroom;

import startwater.score.Verdict;

/**
 * What a decision earned.
 *
 * @param mark 0..100
 * @param word sound, costly or dangerous
 * @param scored whether the visit counts
 * @param arguable whether another reasonable view accepts the choice
 * @param regret % of the stock
 * @param standardError of the regret, % of the stock
 * @param foresight 0..100, NaN where nothing was foreseen
 * @param reading 0..100, NaN where nothing was read
 */
public record Mark(
        double mark,
        Verdict.Word word,
        boolean scored,
        boolean arguable,
        double regret,
        double standardError,
        double foresight,
        double reading) {
    /** What a verdict says, without its explanation. @param reading mark of the reading, NaN where nothing was read */
    public static Mark of(Verdict v, double reading) {
        Verdict.Foresight foresight = v.foresight();
        return new Mark(
                v.mark(),
                v.word(),
                v.scored(),
                v.arguable(),
                v.regret(),
                v.standardError(),
                foresight == null ? Double.NaN : foresight.mark(),
                reading);
    }

    public boolean dangerous() {
        return word == Verdict.Word.DANGEROUS;
    }
}
