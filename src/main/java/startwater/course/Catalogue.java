package startwater.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.drill.Skill;

/** All drills and lessons, each with what comes before it. Immutable. */
public final class Catalogue {
    private final List<Item> items;
    private final List<Item> drills;
    private final Map<Source, Item> bySource = new HashMap<>();
    private final Map<Skill, List<Item>> lessons = new EnumMap<>(Skill.class);
    private final Set<Skill> drilled = EnumSet.noneOf(Skill.class);

    /**
     * A lesson as it stands on the shelf.
     *
     * @param id for example {@code 01-toxic-ammonia}
     * @param number place in the course
     * @param skills what it teaches, the main one first
     * @param after ids of lessons that come first
     */
    public record LessonCard(String id, int number, List<Skill> skills, List<String> after) {
        public LessonCard {
            skills = List.copyOf(skills);
            after = List.copyOf(after);
        }
    }

    private Catalogue(List<Item> items) {
        this.items = List.copyOf(items);
        this.drills = items.stream()
                .filter(Item::drill)
                .sorted(Comparator.comparingInt(Item::number))
                .toList();
        drills.forEach(drill -> drilled.addAll(drill.skills()));
        for (Item item : items) {
            bySource.put(item.source(), item);
        }
        for (Skill skill : Skill.values()) {
            lessons.put(
                    skill,
                    items.stream()
                            .filter(i -> !i.drill() && i.skills().contains(skill))
                            .toList());
        }
    }

    /**
     * Puts the shelves together. A lesson needs the skills of the lessons that come before it, less its own; a drill needs
     * what the first lesson on its main skill needs.
     */
    public static Catalogue of(List<LessonCard> lessons, List<Scenario> drills) {
        List<Item> items = new ArrayList<>();
        List<LessonCard> ordered = lessons.stream()
                .sorted(Comparator.comparingInt(LessonCard::number))
                .toList();
        for (LessonCard lesson : ordered) {
            Set<Skill> needs = needs(lesson, ordered, lesson.skills());
            items.add(new Item(
                    Source.lesson(lesson.id()), lesson.number(), lesson.skills(), needs, Set.of(), Lever.WAIT));
        }
        for (Scenario drill : drills) {
            List<Skill> skills = drill.skills().stream().map(Skill::of).toList();
            Set<Skill> needs = ordered.stream()
                    .filter(l -> l.skills().contains(skills.get(0)))
                    .findFirst()
                    .map(l -> needs(l, ordered, skills))
                    .orElse(Set.of());
            Lever best = drill.rules().isEmpty()
                    ? Lever.WAIT
                    : Lever.ofRule(drill.rules().get(0));
            items.add(new Item(Source.drill(drill.id()), drill.number(), skills, needs, habits(drill), best));
        }
        return new Catalogue(items);
    }

    private static Set<Skill> needs(LessonCard lesson, List<LessonCard> all, List<Skill> own) {
        Set<Skill> needs = EnumSet.noneOf(Skill.class);
        all.stream().filter(l -> lesson.after().contains(l.id())).forEach(l -> needs.addAll(l.skills()));
        own.forEach(needs::remove);
        return needs;
    }

    private static Set<Habit> habits(Scenario drill) {
        Set<Habit> habits = EnumSet.noneOf(Habit.class);
        for (Habit habit : Habit.values()) {
            if (drill.exposes().contains(habit.id())) {
                habits.add(habit);
            }
        }
        return habits;
    }

    /** Lessons in their order, then drills in theirs. */
    public List<Item> items() {
        return items;
    }

    /** The drills by number. */
    public List<Item> drills() {
        return drills;
    }

    /** The lessons that teach a skill, in their order. */
    public List<Item> lessonsOn(Skill skill) {
        return lessons.getOrDefault(skill, List.of());
    }

    /** Whether any drill trains a skill. */
    public boolean drilled(Skill skill) {
        return drilled.contains(skill);
    }

    /** A drill or lesson, or empty where it is on no shelf any more. */
    public Optional<Item> find(Source source) {
        return Optional.ofNullable(bySource.get(source));
    }

    /** Every skill that something here trains or teaches. */
    public Set<Skill> skills() {
        Set<Skill> skills = EnumSet.noneOf(Skill.class);
        items.forEach(i -> skills.addAll(i.skills()));
        return skills;
    }
}
