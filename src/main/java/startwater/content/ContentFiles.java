package startwater.content;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import startwater.drill.Scenario;

/**
 * Drill and lesson files on disk, given by name or by folder. A folder is searched for .yaml files and for .md files whose
 * name begins with a digit; hidden folders and those of a build are passed over. A lesson brings its other language along.
 */
public final class ContentFiles {
    private static final Pattern LESSON = Pattern.compile("\\d.*\\.md");
    /** Where a build puts its copies. */
    private static final String BUILT = "target";

    private static final int DEEPEST_FOLDER = 20;

    private final Set<Path> scenarios = new TreeSet<>();
    private final Set<Path> lessons = new TreeSet<>();
    private final List<Fault> faults = new ArrayList<>();

    private ContentFiles() {}

    /** The files at these paths. Each path must be there. */
    public static ContentFiles at(List<Path> paths) {
        ContentFiles files = new ContentFiles();
        for (Path path : paths) {
            if (Files.isDirectory(path)) {
                files.search(path);
            } else {
                files.name(path);
            }
        }
        return files;
    }

    /** Number of files found. */
    public int count() {
        return scenarios.size() + lessons.size() + faults.size();
    }

    /**
     * Checks all of them, alone and against each other, and plays each drill to its end.
     *
     * @return the faults by file and line; none when all is well
     */
    public List<Fault> checkAndPlay() {
        return check(TrialPlay::play);
    }

    /** Checks all of them without playing a drill. */
    public List<Fault> check() {
        return check(ContentSet.UNPLAYED);
    }

    private List<Fault> check(BiConsumer<ScenarioReader.Placed, Faults> player) {
        List<Fault> all = new ArrayList<>(faults);
        all.addAll(ContentSet.of(
                        scenarios.stream().map(Loaded::of).toList(),
                        lessons.stream().map(Loaded::of).toList(),
                        drillsElsewhere(),
                        player)
                .faults());
        all.sort(Fault.IN_ORDER);
        return List.copyOf(all);
    }

    /** The drills among them that are sound on their own, by file. */
    public Map<Path, Scenario> drills() {
        Map<Path, Scenario> drills = new LinkedHashMap<>();
        for (Path file : scenarios) {
            Parsed<Scenario> parsed = ScenarioReader.read(file);
            if (parsed.ok()) {
                drills.put(file, parsed.get());
            }
        }
        return drills;
    }

    private void name(Path path) {
        String name = path.toString();
        if (name.endsWith(ScenarioReader.ENDING)) {
            scenarios.add(path);
        } else if (name.endsWith(LessonReader.ENDING)) {
            lesson(path);
        } else {
            fault(path, Complaint.WRONG_ENDING);
        }
    }

    private void lesson(Path path) {
        lessons.add(path);
        Path twin = path.resolveSibling(LessonReader.twin(String.valueOf(path.getFileName())));
        if (Files.exists(twin)) {
            lessons.add(twin);
        }
    }

    private void search(Path folder) {
        try {
            Files.walkFileTree(folder, Set.of(), DEEPEST_FOLDER, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) {
                    String name = String.valueOf(at.getFileName());
                    boolean passed = !at.equals(folder) && (name.startsWith(".") || name.equals(BUILT));
                    return passed ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    String name = String.valueOf(file.getFileName());
                    boolean ours = name.endsWith(ScenarioReader.ENDING)
                            || LESSON.matcher(name).matches();
                    if (ours && attributes.isSymbolicLink() && leaves(folder, file)) {
                        fault(file, Complaint.LEAVES_FOLDER);
                    } else if (name.endsWith(ScenarioReader.ENDING)) {
                        scenarios.add(file);
                    } else if (name.endsWith(".yml")) {
                        fault(file, Complaint.WRONG_ENDING);
                    } else if (LESSON.matcher(name).matches()) {
                        lessons.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException e) {
                    fault(file, Complaint.UNREADABLE);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            fault(folder, Complaint.UNREADABLE);
        }
    }

    /** Whether a link leads out of the folder that is checked; one that leads nowhere does not. */
    private static boolean leaves(Path folder, Path link) {
        try {
            return !link.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    private void fault(Path path, Complaint complaint) {
        Faults one = Faults.of(path.toString());
        one.add(0, complaint);
        faults.addAll(one.list());
    }

    /** Drills that come with the program, and those in the folder that lies beside a folder of lessons. */
    private Set<String> drillsElsewhere() {
        Set<String> ids = new HashSet<>(Library.shipped().ids());
        for (Path lesson : lessons) {
            Path folder = lesson.toAbsolutePath()
                    .normalize()
                    .resolveSibling("../scenarios")
                    .normalize();
            if (Files.isDirectory(folder)) {
                ContentFiles.at(List.of(folder))
                        .scenarios
                        .forEach(drill -> ids.add(FileNames.base(drill, ScenarioReader.ENDING)));
            }
        }
        return ids;
    }
}
