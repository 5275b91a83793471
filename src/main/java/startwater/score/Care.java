package startwater.score;

/** How many tanks a decision is judged on. An exam is judged so wherever it is played or checked: its marks agree. */
public enum Care {
    /** 256 tanks. */
    LIVE(Belief.WATERS),
    /** 512 tanks: twice the time. */
    EXAM(Belief.EXAM_WATERS);

    private final int waters;

    Care(int waters) {
        this.waters = waters;
    }

    int waters() {
        return waters;
    }
}
