package startwater.content;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The rules of the live blocks of one lesson: R15, R16 and R33 to R36. */
final class LessonRules {
    /** Fewest words of an explanation: right or wrong alone teaches nothing. */
    static final int FEWEST_REASON_WORDS = 15;

    private final PlainWords plain;
    private final @Nullable Set<String> drills;
    private final Map<String, Integer> blankBefore = new HashMap<>();
    private Faults faults;

    /** @param drills ids of the drills there are; null when that is not known */
    LessonRules(String language, @Nullable Set<String> drills, Faults faults) {
        this.plain = PlainWords.forLessons(language);
        this.drills = drills;
        this.faults = faults;
    }

    /** Lines count within this part of the file from now on. */
    void in(Faults part) {
        this.faults = part;
    }

    /** Notes what is hard in a text of prose. */
    void prose(String text, int line) {
        plain.check(text, "prose", line, faults);
    }

    void figure(Fields f) {
        easy(f, "caption");
        sums().figure(f);
    }

    void worked(Fields f) {
        easy(f, "ask");
        f.groups("steps").forEach(step -> easy(step, "say"));
        sums().check(f, f.groups("steps"));
        Reckoning.byId(f.text("sum")).ifPresent(sum -> fade(sum.id(), f));
    }

    private void fade(String sum, Fields f) {
        if (!f.sound("blank")) {
            return;
        }
        int blank = f.whole("blank");
        int steps = f.items("steps").size();
        Integer before = blankBefore.put(sum, blank);
        if (f.sound("steps") && blank > steps) {
            faults.add(f.line("blank"), Complaint.FADE_TOO_MANY, "blank", blank, "steps", steps);
        } else if (before == null && blank != 0) {
            faults.add(f.line("blank"), Complaint.FADE_FIRST);
        } else if (before != null && blank < before) {
            faults.add(f.line("blank"), Complaint.FADE_BACK, "blank", blank, "before", before);
        }
    }

    void question(Fields f) {
        easy(f, "ask");
        easy(f, "because");
        thin(f, "because");
        List<Fields> options = f.groups("options");
        for (Fields option : options) {
            easy(option, "reason");
            thin(option, "reason");
        }
        long right = options.stream().filter(option -> option.flag("right")).count();
        if (!options.isEmpty() && right != 1 && options.stream().allMatch(option -> option.sound("right"))) {
            faults.add(f.line("options"), Complaint.NOT_ONE_RIGHT, "count", right);
        }
        sums().check(f, List.of(f));
    }

    void strip(Fields f) {
        easy(f, "ask");
        easy(f, "because");
        thin(f, "because");
        if (f.sound("water") && f.group("water").keys().isEmpty()) {
            faults.add(f.line("water"), Complaint.LIST_TOO_SHORT, "key", "water", "count", 0, "least", 1);
        }
    }

    void predict(Fields f) {
        easy(f, "ask");
        easy(f, "because");
        thin(f, "because");
        sums().check(f, List.of(f));
    }

    void drill(Fields f) {
        easy(f, "say");
        String id = f.text("id");
        if (drills == null || !f.sound("id") || drills.contains(id)) {
            return;
        }
        Optional<String> near = Near.to(id, drills);
        if (near.isPresent()) {
            faults.add(f.line("id"), Complaint.DEAD_DRILL_NEAR, "id", id, "near", near.get());
        } else {
            faults.add(f.line("id"), Complaint.DEAD_DRILL, "id", id);
        }
    }

    void caution(Fields f) {
        easy(f, "say");
    }

    private SumRules sums() {
        return new SumRules(faults);
    }

    private void easy(Fields f, String key) {
        plain.check(f.text(key), key, f.line(key), faults);
    }

    private void thin(Fields f, String key) {
        int count = Readability.words(f.text(key)).size();
        if (f.sound(key) && count < FEWEST_REASON_WORDS) {
            faults.add(f.line(key), Complaint.THIN_REASON, "count", count, "least", FEWEST_REASON_WORDS);
        }
    }
}
