package startwater.score;

import java.util.ArrayList;
import java.util.List;

/**
 * One play of a policy: what came of it, and its decisions as far as they were judged.
 *
 * @param steps judged decisions, in order; empty where only the outcome was asked for
 */
record PolicyPlay(Outcome outcome, List<Step> steps) {
    private static final String NEXT_STEP = "\n";
    private static final String NEXT_FIELD = " ";

    PolicyPlay {
        steps = List.copyOf(steps);
    }

    /**
     * One judged decision.
     *
     * @param visit number of the keeper's visit
     * @param mark 0..100
     * @param spread loss of the worst option over the best, % of the stock
     * @param best what kind of thing the best option is
     */
    record Step(
            int visit,
            double mark,
            boolean scored,
            boolean arguable,
            boolean dangerous,
            boolean credited,
            double spread,
            Act best) {
        static Step of(int visit, Verdict v) {
            double worst =
                    v.options().stream().mapToDouble(Verdict.Option::loss).max().orElse(0);
            return new Step(
                    visit,
                    v.mark(),
                    v.scored(),
                    v.arguable(),
                    v.word() == Verdict.Word.DANGEROUS,
                    v.credited(),
                    worst - v.best().loss(),
                    Act.of(v.best().decision()));
        }
    }

    /** The mark of the play: mean over its scored decisions, NaN without any. */
    double mark() {
        return steps.stream()
                .filter(Step::scored)
                .mapToDouble(Step::mark)
                .average()
                .orElse(Double.NaN);
    }

    /** 70 or more and nothing dangerous. */
    boolean passed() {
        return steps.stream().noneMatch(s -> s.scored() && s.dangerous()) && !(mark() < TrialFit.PASS);
    }

    /** As text that {@link #read} takes back, exactly. */
    String written() {
        StringBuilder out = new StringBuilder();
        out.append(String.join(
                NEXT_FIELD,
                Double.toString(outcome.deathsFraction()),
                Double.toString(outcome.daysToFilter()),
                Double.toString(outcome.waterVolumes())));
        for (Step s : steps) {
            out.append(NEXT_STEP)
                    .append(String.join(
                            NEXT_FIELD,
                            Integer.toString(s.visit()),
                            Double.toString(s.mark()),
                            Boolean.toString(s.scored()),
                            Boolean.toString(s.arguable()),
                            Boolean.toString(s.dangerous()),
                            Boolean.toString(s.credited()),
                            Double.toString(s.spread()),
                            s.best().code()));
        }
        return out.toString();
    }

    /** @throws RuntimeException where the text is not one that {@link #written} made */
    static PolicyPlay read(String text) {
        List<String> lines = List.of(text.split(NEXT_STEP));
        String[] o = lines.get(0).split(NEXT_FIELD);
        List<Step> steps = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] f = line.split(NEXT_FIELD);
            steps.add(new Step(
                    Integer.parseInt(f[0]),
                    Double.parseDouble(f[1]),
                    Boolean.parseBoolean(f[2]),
                    Boolean.parseBoolean(f[3]),
                    Boolean.parseBoolean(f[4]),
                    Boolean.parseBoolean(f[5]),
                    Double.parseDouble(f[6]),
                    Act.read(f[7])));
        }
        return new PolicyPlay(
                new Outcome(Double.parseDouble(o[0]), Double.parseDouble(o[1]), Double.parseDouble(o[2])), steps);
    }
}
