package campcloth.pages.found;

import campcloth.fibre.FlameFinding;
import campcloth.fibre.FlameFinding.OfThread;
import campcloth.fibre.FlameFinding.Ranked;
import campcloth.fibre.FlameFinding.Speaks;
import java.util.List;

/** What one burnt thread tells, as the page shows it. */
public record BurntThread(OfThread found) {

    private static final int FOREMOST = 5;
    private static final double LEAST_SHOWN = 0.005;

    /**
     * A class of fibre.
     *
     * @param percent as it is read, such as {@code 83 %}
     * @param value 0 to 1
     */
    public record Row(
            String name,
            Likely likely,
            String percent,
            double value,
            boolean melts,
            List<String> seen,
            List<String> against) {}

    public String thread() {
        return found.thread();
    }

    /** The most probable classes. */
    public List<Row> foremost() {
        return found.ranking().stream().limit(FOREMOST).map(BurntThread::row).toList();
    }

    /** All others, most probable first. */
    public List<Row> others() {
        return found.ranking().stream().skip(FOREMOST).map(BurntThread::row).toList();
    }

    public String notInTheKey() {
        return percent(found.notInTheKey());
    }

    public String melts() {
        return percent(found.melts());
    }

    public List<String> meltingSeen() {
        return found.meltingSeen().stream().map(answer -> answer.words()).toList();
    }

    private static Row row(Ranked ranked) {
        return new Row(
                ranked.fibreClass().name(),
                Likely.of(ranked.probability()),
                percent(ranked.probability()),
                ranked.probability(),
                ranked.fibreClass().melts(),
                reasons(ranked, Speaks.FOR),
                reasons(ranked, Speaks.AGAINST));
    }

    private static List<String> reasons(Ranked ranked, Speaks speaks) {
        return ranked.because().stream()
                .filter(because -> because.speaks() == speaks)
                .map(FlameFinding.Because::answer)
                .map(answer -> answer.words())
                .toList();
    }

    private static String percent(double probability) {
        return probability < LEAST_SHOWN ? "under 1 %" : Math.round(probability * 100) + " %";
    }
}
