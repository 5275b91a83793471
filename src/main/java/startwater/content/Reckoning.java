package startwater.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import startwater.bench.Given;
import startwater.bench.Input;
import startwater.bench.Measure;
import startwater.bench.RefusedInputException;
import startwater.bench.SumKind;

/** What works out the numbers of a lesson: a sum of the bench, a start-up run on the tank model, or plain arithmetic. */
public sealed interface Reckoning {
    /** Its name in a lesson. */
    String id();

    /** What it asks for. */
    List<Input> inputs();

    /** Whether it also asks which species. */
    boolean asksSpecies();

    /**
     * What comes out; the first is the answer.
     *
     * @throws RefusedInputException when something is missing or cannot be
     */
    List<Measure> work(Given given);

    /** The result of this name. @throws IllegalArgumentException when there is none */
    default Measure result(Given given, String name) {
        return work(given).stream()
                .filter(value -> value.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(id() + " does not give " + name));
    }

    /** The one of this name. */
    static Optional<Reckoning> byId(String id) {
        return all().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The names of all there are. */
    static List<String> ids() {
        return all().stream().map(Reckoning::id).toList();
    }

    private static List<Reckoning> all() {
        List<Reckoning> all = new ArrayList<>();
        for (SumKind kind : SumKind.values()) {
            all.add(new OfBench(kind));
        }
        all.add(StartUp.RUN);
        all.add(Plain.SUM);
        return all;
    }

    /** A sum of the bench. */
    record OfBench(SumKind kind) implements Reckoning {
        @Override
        public String id() {
            return kind.id();
        }

        @Override
        public List<Input> inputs() {
            return kind.inputs();
        }

        @Override
        public boolean asksSpecies() {
            return kind.asksSpecies();
        }

        @Override
        public List<Measure> work(Given given) {
            return kind.work(given).values();
        }
    }

    /** A filter without fish that is fed ammonia, on the model that the drills run on. */
    enum StartUp implements Reckoning {
        RUN;

        @Override
        public String id() {
            return "start-up";
        }

        @Override
        public List<Input> inputs() {
            return StartUpRun.INPUTS;
        }

        @Override
        public boolean asksSpecies() {
            return false;
        }

        @Override
        public List<Measure> work(Given given) {
            return StartUpRun.of(given).measures();
        }
    }

    /** Plain arithmetic. */
    enum Plain implements Reckoning {
        SUM;

        @Override
        public String id() {
            return "plain";
        }

        @Override
        public List<Input> inputs() {
            return PlainSum.INPUTS;
        }

        @Override
        public boolean asksSpecies() {
            return false;
        }

        @Override
        public List<Measure> work(Given given) {
            return PlainSum.work(given);
        }
    }
}
