package startwater.app.theme;

import java.util.Locale;
import javafx.scene.paint.Color;

/**
 * The colours of the window, each for light, dark and projector. The style sheet holds the same values as looked-up colours; a
 * test keeps both in step.
 */
public enum Token {
    /** The ground of the window. */
    PAPER("FBFAF6", "10191E", "FFFFFF"),
    /** A raised ground: bars, cards, the place of decision. */
    PANEL("FFFFFF", "152127", "FFFFFF"),
    /** A quiet ground for notes and statements. */
    WASH("F2F2EC", "1B2A31", "F0F1ED"),
    /** Text and values. */
    INK("18252C", "E8EEF0", "0B1418"),
    /** Labels and units. */
    QUIET("5A6B74", "9FB0B8", "43535B"),
    /** Hairlines that carry nothing. */
    LINE("D8DDD9", "2A3A42", "C4CBCA"),
    /** Outlines of controls and of neutral bars. */
    EDGE("7C8B93", "6B808A", "5E6E76"),
    /** The filling of neutral bars, always with an edge. */
    BAR("D2DADB", "33454E", "C9D2D4"),
    /** What can be pressed or is selected. */
    WATER("0E5A73", "58B4CE", "0A4A60"),
    /** Text on water. */
    ON_WATER("FFFFFF", "10191E", "FFFFFF"),
    /** The learner's own choice, as a graphic; always hatched. */
    OWN("B4640A", "F0A54A", "A65A05"),
    /** The learner's own choice, as text. */
    OWN_TEXT("9A5407", "F0A54A", "864700"),
    /** The best choice; always outlined. */
    BEST("1F5FA8", "7DB4F0", "174E8E"),
    /** Harm, and nothing else. */
    DANGER("A3271F", "F08A80", "8E1E17"),
    /** Passed, and nothing else. */
    SAFE("2C6B4F", "7CC7A1", "1F5740"),
    /** Strip and scale: things, light in every theme. */
    CARD("F2EFE6", "E2E0D5", "F2EFE6"),
    /** Text on a card. */
    CARD_INK("18252C", "18252C", "0B1418"),
    /** Quiet text on a card. */
    CARD_QUIET("5A6B74", "4B5A62", "43535B"),
    /** Outlines on a card. */
    CARD_EDGE("7C8B93", "66757D", "5E6E76"),
    /** The wall of the tank. */
    TANK_WALL("4E616B", "8497A0", "3B4C55"),
    /** Tank water under the surface. */
    WATER_TOP("DCEBE9", "1F4D5B", "DCEBE9"),
    /** Tank water at the floor. */
    WATER_DEEP("B4D0CE", "0E2A34", "B4D0CE"),
    /** The surface of the tank water. */
    WATER_SKIN("EEF6F4", "2F6373", "EEF6F4"),
    /** Rings and the line of the surface. */
    RIPPLE("5F8C97", "A9D6E2", "456F7A"),
    /** The back of a fish. */
    FISH_BACK("39454C", "B4C1C5", "2E393F"),
    /** The flank of a fish. */
    FISH_FLANK("77848A", "D3DCDE", "6B787E"),
    /** The belly of a fish. */
    FISH_BELLY("E9E8E1", "F7F8F4", "E9E8E1"),
    /** Eyes, barbels and gill covers. */
    FISH_LINE("222D33", "223038", "182126"),
    /** Haze of solids in the water. */
    VEIL("CBBF9E", "6E6650", "CBBF9E"),
    /** Specks of solids. */
    SPECK("84775A", "B9AD8B", "75694D"),
    /** Air. */
    BUBBLE("FFFFFF", "BFE3EC", "FFFFFF"),
    /** Feed that was not eaten. */
    PELLET("6A4B33", "C2A184", "5A3E29"),
    /** The part of a titration column that has not turned white. */
    COLUMN("8A6B57", "8A6B57", "74553F"),
    /** The part that has. */
    COLUMN_WHITE("FFFFFF", "FFFFFF", "FFFFFF");

    private final String light;
    private final String dark;
    private final String projector;

    Token(String light, String dark, String projector) {
        this.light = light;
        this.dark = dark;
        this.projector = projector;
    }

    /** The colour in a theme. */
    public Color in(Theme theme) {
        return Color.web(hex(theme));
    }

    /** The colour in a theme as six hexadecimal digits. */
    public String hex(Theme theme) {
        return switch (theme) {
            case LIGHT -> light;
            case DARK -> dark;
            case PROJECTOR -> projector;
        };
    }

    /** The name of the looked-up colour in the style sheet, such as {@code -sw-own-text}. */
    public String cssName() {
        return "-sw-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
