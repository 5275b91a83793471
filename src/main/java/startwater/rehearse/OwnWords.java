package startwater.rehearse;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import startwater.drill.Scenario;
import startwater.text.Language;
import startwater.text.Texts;

/** What the card and the story of one's own drill say. */
final class OwnWords {
    private static final int CARD_LINE = 32;

    private OwnWords() {}

    static Scenario.Words of(OwnSystem own, double volumeL, boolean fishIn, Language language) {
        Texts texts = RehearseTexts.of(language);
        String way = fishIn ? "fishIn" : "fishless";
        int count = Objects.requireNonNull(own.stock().count());
        String species = texts.text(
                "reh.choice." + Objects.requireNonNull(own.stock().species()).id());
        double whole = Math.rint(volumeL);
        return new Scenario.Words(
                line(own.name().isBlank() ? texts.text("reh.drill.title") : name(own.name())),
                line(texts.text("reh.drill.place", whole)),
                line(texts.text("reh.drill.water")),
                line(texts.text(fishIn ? "reh.drill.stockIn" : "reh.drill.stockPlanned", count, species)),
                line(texts.text(
                        "reh.drill.keeper",
                        OwnScenario.visits(own).stream().map(texts::number).collect(Collectors.joining(", ")))),
                texts.text("reh.drill.story." + way, whole, count),
                texts.text("reh.drill.goal." + way),
                texts.text("reh.drill.debrief"));
    }

    private static String line(String words) {
        return words.length() <= CARD_LINE
                ? words
                : words.substring(0, CARD_LINE - 1).strip() + "…";
    }

    /** A name as a title may have it: one line, no braces or control characters. */
    private static String name(String typed) {
        String plain = typed.replaceAll("[\\p{Cntrl}{}<>\\[\\]]", " ")
                .replaceAll("\\s+", " ")
                .strip();
        return plain.isEmpty() ? "-" : plain;
    }

    /** A file name of a name: small letters, figures and hyphens. */
    static String slug(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String cut = plain.length() > 40 ? plain.substring(0, 40).replaceAll("-+$", "") : plain;
        return cut.isEmpty() || !Character.isLetter(cut.charAt(0))
                ? "own-system" + (cut.isEmpty() ? "" : "-" + cut)
                : cut;
    }
}
