package startwater.content;

import java.util.ArrayList;
import java.util.List;

/** Holds the two languages of a lesson against each other: R32. */
final class Twins {
    private static final List<String> SAME_IN_FRONT = List.of("minutes", "skills", "rules", "after", "competencies");
    private static final String NOTHING = "-";

    private Twins() {}

    private record Live(String skeleton, int line) {}

    /** What differs, noted in the file of {@code here}. */
    static List<Fault> compare(String file, LessonReader.Placed here, LessonReader.Placed there) {
        Faults faults = Faults.of(file);
        for (String key : SAME_IN_FRONT) {
            if (!shown(here.front(), key).equals(shown(there.front(), key))) {
                faults.add(here.front().line(key) + 1, Complaint.TWIN_FRONT_DIFFERS, "key", key);
            }
        }
        List<Live> mine = live(here);
        List<Live> other = live(there);
        for (int i = 0; i < Math.max(mine.size(), other.size()); i++) {
            String ours = i < mine.size() ? mine.get(i).skeleton() : NOTHING;
            String theirs = i < other.size() ? other.get(i).skeleton() : NOTHING;
            if (!ours.equals(theirs)) {
                int line = i < mine.size() ? mine.get(i).line() : 0;
                faults.add(line, Complaint.TWIN_DIFFERS, "here", ours, "there", theirs);
                break;
            }
        }
        return faults.list();
    }

    private static String shown(Fields front, String key) {
        return front.number(key) + " " + front.texts(key) + " " + front.numbers(key);
    }

    private static List<Live> live(LessonReader.Placed placed) {
        List<Live> live = new ArrayList<>();
        List<Block> blocks = placed.lesson().blocks();
        for (int i = 0; i < blocks.size(); i++) {
            String skeleton = blocks.get(i).skeleton();
            if (!skeleton.isEmpty()) {
                live.add(new Live(skeleton, placed.lines().get(i)));
            }
        }
        return live;
    }
}
