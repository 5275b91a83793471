package startwater;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rooms of the house, who may use whom, and what no engine room may touch. Each rule says why. */
class ArchitectureTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("startwater");

    /** What a room may use; what those may use it may use too. */
    private static final Map<String, List<String>> ROOMS = new LinkedHashMap<>();

    static {
        ROOMS.put("quantity", List.of());
        ROOMS.put("water", List.of("quantity"));
        ROOMS.put("biofilter", List.of("quantity", "water"));
        ROOMS.put("fish", List.of("quantity", "water"));
        ROOMS.put("tank", List.of("water", "biofilter", "fish"));
        ROOMS.put("bench", List.of("water", "fish", "quantity"));
        ROOMS.put("strip", List.of("quantity", "tank"));
        ROOMS.put("drill", List.of("tank", "strip"));
        ROOMS.put("score", List.of("drill", "bench"));
        ROOMS.put("course", List.of("score"));
        ROOMS.put("content", List.of("course", "score"));
        ROOMS.put("record", List.of("score", "course", "content"));
        ROOMS.put("text", List.of("score", "bench"));
        ROOMS.put("page", List.of());
        ROOMS.put("rehearse", List.of("score", "content", "text", "page"));
        ROOMS.put("classroom", List.of("record", "course", "score", "content", "text", "page"));
        ROOMS.put(
                "cli",
                List.of("rehearse", "classroom", "page", "text", "content", "record", "course", "score", "bench"));
        ROOMS.put(
                "app",
                List.of(
                        "cli",
                        "rehearse",
                        "classroom",
                        "page",
                        "text",
                        "content",
                        "record",
                        "course",
                        "score",
                        "bench"));
    }

    private static final String[] ENGINE = {
        "startwater.quantity..",
        "startwater.water..",
        "startwater.biofilter..",
        "startwater.fish..",
        "startwater.tank..",
        "startwater.bench..",
        "startwater.strip..",
        "startwater.drill..",
        "startwater.score.."
    };

    private static Set<String> allowed(String room) {
        Set<String> all = new LinkedHashSet<>();
        all.add(room);
        for (String used : ROOMS.getOrDefault(room, List.of())) {
            all.addAll(allowed(used));
        }
        return all;
    }

    @TestFactory
    Stream<DynamicTest> roomsUseOnlyTheRoomsBelow() {
        return ROOMS.keySet().stream()
                .filter(ArchitectureTest::exists)
                .map(room -> DynamicTest.dynamicTest(room, () -> {
                    String[] packages = allowed(room).stream()
                            .map(r -> "startwater." + r + "..")
                            .toArray(String[]::new);
                    ArchRule rule = noClasses()
                            .that()
                            .resideInAPackage("startwater." + room + "..")
                            .should()
                            .dependOnClassesThat(resideInAPackage("startwater..")
                                    .and(describe("outside its rooms", c -> !resideInAnyPackage(packages)
                                            .test(c))))
                            .because("a room that knows only the rooms below can be read, tested and replaced alone");
                    rule.check(CLASSES);
                }));
    }

    private static boolean exists(String room) {
        return CLASSES.stream().anyMatch(c -> c.getPackageName().startsWith("startwater." + room));
    }

    @Test
    void everyPackageIsARoom() {
        List<String> strangers = new ArrayList<>();
        CLASSES.forEach(c -> {
            String rest = c.getPackageName().replaceFirst("^startwater\\.?", "");
            if (!ROOMS.containsKey(rest.split("\\.")[0])) {
                strangers.add(c.getName());
            }
        });
        assertThat(strangers)
                .as("classes outside the rooms of the house")
                .filteredOn(name -> !name.endsWith("package-info"))
                .isEmpty();
    }

    @Test
    void engineRoomsKnowNoWindow() {
        noClasses()
                .that()
                .resideInAnyPackage(ENGINE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..")
                .because("window, terminal, class and tests share one engine, and a server has no screen")
                .check(CLASSES);
    }

    @Test
    void engineRoomsUseStrictMathOnly() {
        Set<String> loose = Set.of(
                "exp", "log", "log10", "log1p", "expm1", "pow", "sin", "cos", "tan", "atan", "atan2", "cbrt", "sinh",
                "cosh", "tanh", "asin", "acos", "hypot", "random", "fma");
        List<String> found = calls(
                call -> call.getTargetOwner().getName().equals("java.lang.Math") && loose.contains(call.getName()));
        assertThat(found)
                .as("Math may differ between machines in the last bit, and a replay must not")
                .isEmpty();
    }

    @Test
    void engineRoomsReadNoClockAndDrawNoUnseededNumber() {
        List<String> found = calls(call -> {
            String owner = call.getTargetOwner().getName();
            return (owner.equals("java.lang.System") && call.getName().matches("currentTimeMillis|nanoTime"))
                    || (owner.startsWith("java.time.") && call.getName().equals("now"))
                    || owner.equals("java.util.Random")
                    || owner.equals("java.util.concurrent.ThreadLocalRandom")
                    || owner.equals("java.util.UUID");
        });
        assertThat(found)
                .as("time and chance are injected, so that the same case gets the same mark")
                .isEmpty();
    }

    private static List<String> calls(java.util.function.Predicate<JavaMethodCall> wanted) {
        List<String> found = new ArrayList<>();
        CLASSES.stream().filter(c -> resideInAnyPackage(ENGINE).test(c)).forEach(c -> c.getMethodCallsFromSelf()
                .forEach(call -> {
                    if (wanted.test(call)) {
                        found.add(call.getDescription());
                    }
                }));
        return found;
    }

    @Test
    void theRefereeStaysOutOfMarkedPaths() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "startwater.drill..", "startwater.score..", "startwater.strip..", "startwater.bench..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.math3..")
                .because("a referee that played could not judge, and its results may change with its version")
                .check(CLASSES);
    }

    @Test
    void viewModelsNeedNoToolkit() {
        noClasses()
                .that()
                .resideInAPackage("startwater.app.model..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javafx.scene..",
                        "javafx.stage..",
                        "javafx.application..",
                        "javafx.geometry..",
                        "javafx.animation..")
                .because("a view-model that starts no toolkit is tested in milliseconds")
                .allowEmptyShould(!exists("app.model"))
                .check(CLASSES);
    }
}
