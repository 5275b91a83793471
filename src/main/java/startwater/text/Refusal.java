package startwater.text;

import java.util.List;

/** Why something typed was not taken: a text key and what fills it. What was typed stays where it is. */
public record Refusal(String key, List<Object> parameters) {
    public Refusal {
        parameters = List.copyOf(parameters);
    }

    public static Refusal of(String key, Object... parameters) {
        return new Refusal(key, List.of(parameters));
    }

    /** The reason in words. */
    public String say(Texts texts) {
        return texts.text(key, parameters.toArray());
    }
}
