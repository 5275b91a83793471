package startwater.rehearse;

import java.util.List;
import startwater.bench.UnitSystem;
import startwater.text.Refusal;
import startwater.text.Texts;

/**
 * Something about the learner's system that they should know before they fill it.
 *
 * @param weight how much it matters
 * @param entry the line of the form it is about
 * @param code which finding: its words stand under {@code reh.find.CODE} and {@code reh.do.CODE}
 * @param values numbers, words, {@link Amount}s and {@link Refusal}s for its sentence
 */
public record Finding(Weight weight, Entry entry, String code, List<Object> values) {
    /** How much a finding matters. */
    public enum Weight {
        /** No start-up can be reckoned, or none can go well. */
        REFUSE,
        /** It can be reckoned, and it will hurt. */
        WARN,
        /** Not known, and taken for something. */
        ASSUMED
    }

    public Finding {
        values = List.copyOf(values);
    }

    static Finding refuse(Entry entry, String code, Object... values) {
        return new Finding(Weight.REFUSE, entry, code, List.of(values));
    }

    static Finding warn(Entry entry, String code, Object... values) {
        return new Finding(Weight.WARN, entry, code, List.of(values));
    }

    static Finding assumed(Entry entry, String code, Object... values) {
        return new Finding(Weight.ASSUMED, entry, code, List.of(values));
    }

    /** The reason, one or two sentences. */
    public String reason(Texts texts, UnitSystem system) {
        return texts.text("reh.find." + code, said(texts, system));
    }

    /** What to do about it. */
    public String advice(Texts texts, UnitSystem system) {
        return texts.text("reh.do." + code, said(texts, system));
    }

    private Object[] said(Texts texts, UnitSystem system) {
        return values.stream().map(value -> said(value, texts, system)).toArray();
    }

    private static Object said(Object value, Texts texts, UnitSystem system) {
        if (value instanceof Amount amount) {
            return amount.say(texts, system);
        }
        return value instanceof Refusal refusal ? refusal.say(texts) : value;
    }
}
