package startwater.classroom.xapi;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import startwater.classroom.Attempt;
import startwater.classroom.ClassTable;
import startwater.course.Graded;
import startwater.course.Learner;
import startwater.course.SkillState;
import startwater.drill.Skill;
import startwater.text.Language;
import startwater.text.Texts;
import tools.jackson.databind.node.ObjectNode;

/** All statements of a class, in an order that stays: attempts by time, and after them the skills that count as known. */
public final class ClassStatements {
    private static final UUID SKILLS = UUID.fromString("0b1d6a52-6d1e-5a53-9a51-5f0c7a1c2e10");

    private ClassStatements() {}

    /** The statements. @param classroom name of the class, see {@link Statements} */
    public static List<ObjectNode> of(List<Attempt> attempts, Names names, String classroom) {
        Statements maker = new Statements(names, classroom);
        List<ObjectNode> all = new ArrayList<>();
        attempts.stream()
                .sorted(Comparator.comparing(Attempt::begun).thenComparing(a -> a.id().toString()))
                .forEach(a -> all.addAll(maker.of(a)));
        Map<String, List<Graded>> byLearner = new TreeMap<>();
        attempts.forEach(a ->
                byLearner.computeIfAbsent(a.learner(), l -> new ArrayList<>()).addAll(ClassTable.graded(a)));
        byLearner.forEach((learner, graded) -> known(maker, classroom, learner, graded, all));
        return List.copyOf(all);
    }

    private static void known(
            Statements maker, String classroom, String learner, List<Graded> graded, List<ObjectNode> all) {
        Texts english = Texts.of(Language.EN, Texts.LESSON);
        Texts spanish = Texts.of(Language.ES, Texts.LESSON);
        for (SkillState state : Learner.of(graded, ZoneOffset.UTC).states()) {
            if (!state.mastered()) {
                continue;
            }
            Skill skill = state.skill();
            Instant last = graded.stream()
                    .filter(g -> g.skill() == skill)
                    .map(Graded::at)
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
            all.add(maker.of(new Statements.SkillKnown(
                    NameUuid.of(SKILLS, classroom + "\n" + learner + "\n" + skill.id() + "\n" + last),
                    learner,
                    skill.id(),
                    english.text("skill." + skill.id()),
                    spanish.text("skill." + skill.id()),
                    state.known(),
                    last)));
        }
    }
}
