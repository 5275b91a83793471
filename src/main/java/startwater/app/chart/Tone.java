package startwater.app.chart;

import startwater.app.theme.Token;

/** The part a line or a mark plays, which fixes its colour. */
public enum Tone {
    INK(Token.INK, Token.INK),
    QUIET(Token.QUIET, Token.QUIET),
    WATER(Token.WATER, Token.WATER),
    /** The learner's own choice. */
    OWN(Token.OWN, Token.OWN_TEXT),
    BEST(Token.BEST, Token.BEST),
    DANGER(Token.DANGER, Token.DANGER),
    SAFE(Token.SAFE, Token.SAFE);

    private final Token graphic;
    private final Token text;

    Tone(Token graphic, Token text) {
        this.graphic = graphic;
        this.text = text;
    }

    Token graphic() {
        return graphic;
    }

    Token text() {
        return text;
    }
}
