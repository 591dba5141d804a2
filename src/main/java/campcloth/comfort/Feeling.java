package campcloth.comfort;

/** How a minute feels, as far as it is computed. */
public enum Feeling {
    TOO_COLD("too cold"),
    COMFORTABLE("comfortable"),
    TOO_WARM("too warm"),
    TOO_COLD_AND_TOO_WARM("too cold at rest, too warm at work"),
    NOT_COMPUTED("not computed");

    private final String words;

    Feeling(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static Feeling of(Moment moment) {
        if (!moment.coldJudged()) {
            return NOT_COMPUTED;
        }
        if (moment.tooCold()) {
            return moment.tooWarm() ? TOO_COLD_AND_TOO_WARM : TOO_COLD;
        }
        return moment.tooWarm() ? TOO_WARM : COMFORTABLE;
    }
}
