package campcloth.fire;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Less of some fibres and more of another; all the rest stays. Several fibres shrink in proportion.
 *
 * @param fibres what there is less of
 * @param atMostPercent their share together, percent of mass
 * @param inPlace what stands in their place: any one of these comes to the same verdict, the first is the one judged
 */
record OtherBlend(List<Fibre> fibres, int atMostPercent, List<Fibre> inPlace) implements Change {

    OtherBlend {
        fibres = List.copyOf(fibres);
        inPlace = List.copyOf(inPlace);
    }

    @Override
    public Kind kind() {
        return Kind.OTHER_BLEND;
    }

    @Override
    public String to() {
        return atMostPercent + " % " + String.join("+", keys(fibres)) + ", rest " + String.join("/", keys(inPlace));
    }

    @Override
    public String todo(FireCase before) {
        String less =
                FibreWords.joined(fibres.stream().map(OtherBlend::name).toList(), atMostPercent > 0 ? "and" : "or");
        String more = FibreWords.joined(inPlace.stream().map(OtherBlend::name).toList(), "or");
        return atMostPercent > 0
                ? "Take it with at most " + atMostPercent + " % " + less + (fibres.size() > 1 ? " together" : "")
                        + ", and "
                        + more + " in place of the rest; it has "
                        + Words.number(percent(before.cloth().blend())) + " %."
                : (unnamed() ? "Find out what its unnamed fibre is (label, seller), or take" : "Take") + " it without "
                        + less + ": with " + more + " in place of that.";
    }

    private boolean unnamed() {
        return fibres.stream().anyMatch(fibre -> fibre.family() == FibreFamily.UNNAMED);
    }

    @Override
    public FireCase in(FireCase before) {
        Blend blend = before.cloth().blend();
        double now = percent(blend);
        Map<Fibre, Double> percent = new LinkedHashMap<>();
        for (Blend.Share share : blend.shares()) {
            double kept = fibres.contains(share.fibre()) ? atMostPercent / now : 1;
            percent.put(share.fibre(), share.percent() * kept);
        }
        percent.merge(inPlace.get(0), now - atMostPercent, Double::sum);
        List<Blend.Share> shares = new ArrayList<>();
        percent.forEach((fibre, share) -> {
            if (share > 0) {
                shares.add(new Blend.Share(fibre, share));
            }
        });
        return before.withBlend(new Blend(shares));
    }

    /** With one fibre of those in its place. */
    OtherBlend with(List<Fibre> other) {
        return new OtherBlend(fibres, atMostPercent, other);
    }

    /** How much of the blend is another fibre then, percent. */
    double exchangedPercent(Blend blend) {
        return percent(blend) - atMostPercent;
    }

    private double percent(Blend blend) {
        return blend.shares().stream()
                .filter(share -> fibres.contains(share.fibre()))
                .mapToDouble(Blend.Share::percent)
                .sum();
    }

    private static List<String> keys(List<Fibre> fibres) {
        return fibres.stream().map(Fibre::key).toList();
    }

    private static String name(Fibre fibre) {
        return fibre.family() == FibreFamily.UNNAMED ? "unnamed fibre" : fibre.name();
    }
}
