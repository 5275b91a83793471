package startwater.content;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import startwater.bench.Given;
import startwater.bench.Measure;

/**
 * Numbers that a text may tell.
 *
 * @param exact just as they are
 * @param worked to the digits that are printed
 */
record ToldNumbers(Set<Double> exact, Set<Double> worked) {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d.,])\\d+(?:[.,]\\d+)?(?![\\p{L}\\d])");
    /** Rules, steps, lessons and days are called by a number that counts nothing. */
    private static final Pattern BY_NAME =
            Pattern.compile("(?iu)\\b(rules?|steps?|lessons?|days?|reglas?|pasos?|lecci[oó]n(es)?|d[ií]as?)"
                    + "((,| and| to| y| a|,? or|,? o)? ?\\d+)+");

    private static final double EXACT = 1e-9;

    ToldNumbers() {
        this(new HashSet<>(), new HashSet<>());
    }

    /** The inputs of a sum, also as a share or a percentage. */
    static ToldNumbers inputs(Given given) {
        ToldNumbers told = new ToldNumbers();
        for (double v : given.numbers().values()) {
            told.exact.addAll(List.of(v, v / 100, 100 * v));
        }
        return told;
    }

    static ToldNumbers results(List<Measure> results) {
        ToldNumbers told = new ToldNumbers();
        results.forEach(result -> told.worked.add(result.value()));
        return told;
    }

    /** The numbers that another text tells. */
    static ToldNumbers of(String text) {
        ToldNumbers told = new ToldNumbers();
        in(text).forEach(number -> told.exact.add(Double.valueOf(number)));
        return told;
    }

    ToldNumbers and(ToldNumbers other) {
        ToldNumbers both = new ToldNumbers(new HashSet<>(exact), new HashSet<>(worked));
        both.exact.addAll(other.exact);
        both.worked.addAll(other.worked);
        return both;
    }

    /** Nothing is nothing, wherever it stands. */
    boolean holds(String number) {
        BigDecimal told = new BigDecimal(number);
        double half = 0.5 * Math.pow(10, -told.scale()) + EXACT;
        return told.signum() == 0
                || exact.stream().anyMatch(v -> Math.abs(v - told.doubleValue()) < EXACT)
                || worked.stream().anyMatch(v -> Math.abs(v - told.doubleValue()) <= half);
    }

    /** The numbers of a text, with a decimal point. */
    static List<String> in(String text) {
        List<String> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(BY_NAME.matcher(text).replaceAll(" "));
        while (number.find()) {
            numbers.add(number.group().replace(',', '.'));
        }
        return numbers;
    }
}
