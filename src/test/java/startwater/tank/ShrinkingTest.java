package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ShrinkingTest {
    @Test
    void keepsOnlyWhatTheFailureNeeds() {
        List<Integer> all = IntStream.range(0, 57).boxed().toList();
        List<Integer> least = Shrinking.smallest(all, list -> list.contains(11) && list.contains(42));
        assertThat(least).containsExactly(11, 42);
    }
}
