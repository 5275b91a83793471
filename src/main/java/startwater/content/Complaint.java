package startwater.content;

import java.util.Locale;
import java.util.Set;

/**
 * The ways in which a rule can be broken. Each has one sentence in the language files, under {@link #key()}, with the
 * placeholders named here.
 */
public enum Complaint {
    UNREADABLE(Rule.R01),
    NOT_A_FILE(Rule.R01),
    WRONG_ENDING(Rule.R01),
    LEAVES_FOLDER(Rule.R01),
    TOO_BIG(Rule.R01, "limit"),
    NOT_UTF8(Rule.R01),
    NOT_TEXT(Rule.R01, "code"),
    EMPTY_FILE(Rule.R01),
    MORE_FAULTS(Rule.R01, "limit"),

    NOT_YAML(Rule.R02),
    TAB(Rule.R02),
    COLON_IN_TEXT(Rule.R02),
    MISSING_COLON(Rule.R02),
    UNCLOSED_QUOTE(Rule.R02),

    ANCHOR_OR_ALIAS(Rule.R03),
    TAG(Rule.R03),
    MANY_DOCUMENTS(Rule.R03),
    TOO_DEEP(Rule.R03, "limit"),
    TOO_MANY_PARTS(Rule.R03, "limit"),

    DOUBLE_KEY(Rule.R04, "key", "line"),

    UNKNOWN_KEY(Rule.R05, "key", "known"),
    UNKNOWN_KEY_NEAR(Rule.R05, "key", "near"),
    KEY_NOT_TEXT(Rule.R05),

    MISSING_KEY(Rule.R06, "key"),

    NO_VALUE(Rule.R07, "key"),
    WANT_NUMBER(Rule.R07, "key", "value"),
    DECIMAL_COMMA(Rule.R07, "key", "value"),
    CLOCK_TIME(Rule.R07, "key", "value"),
    UNIT_IN_NUMBER(Rule.R07, "key", "value"),
    QUOTED_NUMBER(Rule.R07, "key", "value"),
    WANT_WHOLE(Rule.R07, "key", "value"),
    WANT_FLAG(Rule.R07, "key", "value"),
    WANT_TEXT(Rule.R07, "key"),
    WANT_QUOTES(Rule.R07, "key", "value"),
    WANT_LIST(Rule.R07, "key"),
    WANT_BLOCK(Rule.R07, "key"),
    WANT_ONE_OF(Rule.R07, "key", "known"),

    OUT_OF_RANGE(Rule.R08, "key", "value", "low", "high"),

    LIST_TOO_SHORT(Rule.R09, "key", "count", "least"),
    LIST_TOO_LONG(Rule.R09, "key", "count", "most"),
    TWICE(Rule.R09, "key", "value"),

    UNKNOWN_NAME(Rule.R10, "key", "value", "known"),
    UNKNOWN_NAME_NEAR(Rule.R10, "key", "value", "near"),

    WRONG_SCHEMA(Rule.R11, "value", "known"),

    ID_NOT_KEBAB(Rule.R12, "value"),
    ID_NOT_FILE_NAME(Rule.R12, "value", "name"),

    LANGUAGE_MISSING(Rule.R13, "key"),

    BLANK_TEXT(Rule.R14, "key"),
    TEXT_TOO_LONG(Rule.R14, "key", "count", "most"),
    CONTROL_CHARACTER(Rule.R14, "key"),

    HARD_ENGLISH(Rule.R15, "key", "grade", "most"),
    HARD_SPANISH(Rule.R15, "key", "score", "least"),

    LONG_SENTENCE(Rule.R16, "key", "count", "most", "start"),

    HOURS_NOT_RISING(Rule.R17, "key", "value", "before"),
    HOUR_AFTER_DAY(Rule.R17, "key", "value"),

    DECISIONS_NOT_RISING(Rule.R18),
    DECISIONS_NOT_FROM_FIRST(Rule.R18, "value"),
    DECISION_AFTER_END(Rule.R18, "value", "visits"),
    MORE_DECISIONS_THAN_MOST(Rule.R18, "count", "most"),

    AWAY_BACKWARDS(Rule.R19, "from", "to"),
    AWAY_OUTSIDE(Rule.R19, "from", "to", "first", "last"),
    AWAY_OVERLAPS(Rule.R19, "from", "to"),
    AWAY_AT_FIRST_VISIT(Rule.R19),

    BEFORE_NOT_FROM_START(Rule.R20),
    BEFORE_NOT_RISING(Rule.R20, "day"),
    BEFORE_TOO_LATE(Rule.R20, "day", "first"),
    BEFORE_MISSING(Rule.R20, "first"),

    EVENT_OUTSIDE(Rule.R21, "day", "last"),
    EVENT_NEEDS(Rule.R21, "kind", "key"),
    EVENT_HAS_NO(Rule.R21, "kind", "key"),

    NO_FISH(Rule.R22),
    FISH_TWICE(Rule.R22),
    NURSERY_NOT_PLANNED(Rule.R22),

    STOCK_TOO_DENSE(Rule.R23, "density", "most"),
    STOCK_WITHOUT_AIR(Rule.R23, "density", "most"),

    NO_SUCH_WATER(Rule.R24, "ph", "alkalinity"),
    NO_SUCH_WATER_PRIOR(Rule.R24, "ph", "alkalinity"),
    CHLORINE_OVER_STATED(Rule.R24, "sum", "stated"),

    RANGE_BACKWARDS(Rule.R25, "key"),
    PRIOR_OUTSIDE(Rule.R25, "key", "reach", "low", "high"),

    NUMBER_TWICE(Rule.R26, "number", "other"),
    ID_TAKEN(Rule.R26, "id"),
    NO_SUCH_DRILL(Rule.R26, "id", "known"),

    CANNOT_PLAY(Rule.R27, "why"),

    LESSON_NAME(Rule.R28, "name"),
    LESSON_NUMBER_TWICE(Rule.R28, "number", "other"),

    NO_FRONT(Rule.R29),
    OPEN_FRONT(Rule.R29),

    RAW_HTML(Rule.R30),
    PICTURE_OR_LINK(Rule.R30),
    PLAIN_CODE(Rule.R30),
    NOT_PLAIN_PROSE(Rule.R30),
    STRAY_HEADING(Rule.R30),

    UNKNOWN_BLOCK(Rule.R31, "kind", "known"),
    UNKNOWN_BLOCK_NEAR(Rule.R31, "kind", "near"),
    NO_BLOCK_KIND(Rule.R31),
    OPEN_BLOCK(Rule.R31),

    NO_TWIN(Rule.R32, "twin"),
    TWIN_DIFFERS(Rule.R32, "here", "there"),
    TWIN_FRONT_DIFFERS(Rule.R32, "key"),

    DEAD_DRILL(Rule.R33, "id"),
    DEAD_DRILL_NEAR(Rule.R33, "id", "near"),

    SUM_INPUT_MISSING(Rule.R34, "sum", "key"),
    SUM_INPUT_UNKNOWN(Rule.R34, "sum", "key", "known"),
    SUM_INPUT_RANGE(Rule.R34, "key", "value", "low", "high"),
    SUM_RESULT_UNKNOWN(Rule.R34, "sum", "value", "known"),
    SUM_REFUSED(Rule.R34, "sum", "key"),
    SUM_NEEDS_NO_SPECIES(Rule.R34, "sum"),
    SLIDER_BACKWARDS(Rule.R34, "key"),
    SLIDER_AND_FIXED(Rule.R34, "key"),

    NOT_ONE_RIGHT(Rule.R35, "count"),
    THIN_REASON(Rule.R35, "count", "least"),

    FADE_FIRST(Rule.R36),
    FADE_BACK(Rule.R36, "blank", "before"),
    FADE_TOO_MANY(Rule.R36, "blank", "steps"),

    VALUE_UNKNOWN(Rule.R37, "value", "known"),
    VALUE_UNUSED(Rule.R37, "value"),

    LEAVES_TEMPERATURE(Rule.R38, "day", "value", "equation", "low", "high", "policy"),
    LEAVES_SALT(Rule.R38, "day", "value", "equation", "low", "high", "policy"),
    LEAVES_PH(Rule.R38, "day", "value", "equation", "low", "high", "policy"),
    LEAVES_MASS(Rule.R38, "day", "value", "equation", "low", "high", "policy"),
    LEAVES_RANGE(Rule.R38, "day", "quantity", "value", "equation", "low", "high", "policy"),

    NO_SUCH_LESSON(Rule.R39, "id"),
    NO_SUCH_LESSON_NEAR(Rule.R39, "id", "near"),
    AFTER_CIRCLE(Rule.R39, "chain"),

    PLACEHOLDER(Rule.R40, "key", "value"),

    COLOUR(Rule.R41, "key", "value");

    private final Rule rule;
    private final Set<String> placeholders;

    Complaint(Rule rule, String... placeholders) {
        this.rule = rule;
        this.placeholders = Set.of(placeholders);
    }

    /** The rule that is broken. */
    public Rule rule() {
        return rule;
    }

    /** What its sentence must be given. */
    public Set<String> placeholders() {
        return placeholders;
    }

    /** Key of its sentence in the language files. */
    String key() {
        return "fault." + rule.name() + "." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
