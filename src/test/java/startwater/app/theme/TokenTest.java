package startwater.app.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TokenTest {
    /** Contrast by WCAG 2.2, success criteria 1.4.3 and 1.4.11. */
    private static final double TEXT = 4.5;

    private static final double GRAPHICS = 3.0;

    @ParameterizedTest
    @EnumSource(Theme.class)
    void styleSheetHoldsTheSameColours(Theme theme) throws IOException {
        Map<String, String> declared = declared(theme);
        Set<String> known = new HashSet<>();
        for (Token token : Token.values()) {
            known.add(token.cssName());
            assertThat(declared.get(token.cssName())).as("%s %s", theme, token).isEqualTo("#" + token.hex(theme));
        }
        assertThat(declared.keySet()).isEqualTo(known);
    }

    @Test
    void styleSheetLooksUpOnlyColoursThatExist() throws IOException {
        Set<String> known = new HashSet<>();
        for (Token token : Token.values()) {
            known.add(token.cssName());
        }
        Matcher used = Pattern.compile("-sw-[a-z-]+").matcher(sheet());
        int uses = 0;
        while (used.find()) {
            uses++;
            assertThat(known).contains(used.group());
        }
        assertThat(uses).isGreaterThan(150);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void textCanBeRead(Theme theme) {
        for (Token ground : List.of(Token.PAPER, Token.PANEL, Token.WASH)) {
            for (Token text : List.of(
                    Token.INK, Token.QUIET, Token.WATER, Token.OWN_TEXT, Token.BEST, Token.DANGER, Token.SAFE)) {
                assertContrast(theme, text, ground, TEXT);
            }
        }
        assertContrast(theme, Token.ON_WATER, Token.WATER, TEXT);
        assertContrast(theme, Token.CARD_INK, Token.CARD, TEXT);
        assertContrast(theme, Token.CARD_QUIET, Token.CARD, TEXT);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void graphicsCanBeSeen(Theme theme) {
        for (Token ground : List.of(Token.PAPER, Token.PANEL, Token.WASH)) {
            for (Token graphic : List.of(Token.EDGE, Token.OWN, Token.BEST, Token.TANK_WALL)) {
                assertContrast(theme, graphic, ground, GRAPHICS);
            }
        }
        assertContrast(theme, Token.CARD_EDGE, Token.CARD, GRAPHICS);
        assertContrast(theme, Token.RIPPLE, Token.WATER_SKIN, GRAPHICS);
    }

    @Test
    void paintedPartsTakeTheirColoursFromTokensOnly() throws IOException {
        Pattern literal =
                Pattern.compile("Color\\.(web|rgb|hsb|color|gray)|Color\\.(?!TRANSPARENT)[A-Z]{3,}|#[0-9A-Fa-f]{6}");
        int files = 0;
        for (String folder : List.of("chart", "view/part")) {
            try (Stream<Path> sources = Files.list(Path.of("src/main/java/startwater/app", folder))) {
                for (Path source : sources.toList()) {
                    files++;
                    assertThat(literal.matcher(Files.readString(source)).find())
                            .as(source.toString())
                            .isFalse();
                }
            }
        }
        assertThat(files).isGreaterThan(15);
    }

    /** WCAG's own figures for grey on white. */
    @Test
    void contrastIsThatOfThePublishedRule() {
        assertThat(contrast(Color.web("767676"), Color.WHITE)).isBetween(4.541, 4.543);
        assertThat(contrast(Color.web("777777"), Color.WHITE)).isBetween(4.477, 4.479);
        assertThat(contrast(Color.web("949494"), Color.WHITE)).isBetween(3.032, 3.034);
    }

    private static void assertContrast(Theme theme, Token first, Token second, double least) {
        assertThat(contrast(first.in(theme), second.in(theme)))
                .as("%s: %s on %s", theme, first, second)
                .isGreaterThanOrEqualTo(least);
    }

    private static double contrast(Color first, Color second) {
        double a = luminance(first);
        double b = luminance(second);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static Map<String, String> declared(Theme theme) throws IOException {
        Matcher block = Pattern.compile("\\.root\\." + theme.styleClass() + " \\{([^}]*)}")
                .matcher(sheet());
        assertThat(block.find()).isTrue();
        Map<String, String> declared = new LinkedHashMap<>();
        Matcher line = Pattern.compile("(-sw-[a-z-]+): (#[0-9A-F]{6});").matcher(block.group(1));
        while (line.find()) {
            declared.put(line.group(1), line.group(2));
        }
        return declared;
    }

    private static String sheet() throws IOException {
        try (InputStream in = TokenTest.class.getResourceAsStream("/startwater/app/theme/startwater.css")) {
            assertThat(in).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
