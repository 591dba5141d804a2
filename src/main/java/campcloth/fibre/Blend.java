package campcloth.fibre;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which fibres a cloth is made of, in percent of mass, greatest share first. The shares sum to 100; each fibre stands once.
 */
public record Blend(List<Share> shares) {

    /** How far the written shares may miss 100 by rounding. */
    private static final double SUM_TOLERANCE_PERCENT = 0.01;

    /** One fibre's share. */
    public record Share(Fibre fibre, double percent) {

        public Share {
            if (percent > 100 && percent <= 100 + SUM_TOLERANCE_PERCENT) {
                percent = 100;
            }
            if (!(percent > 0 && percent <= 100)) {
                throw Refused.of(
                        "percent", "is " + Words.exact(percent), "give a share above 0 and at most 100 percent");
            }
        }
    }

    public Blend {
        shares = shares.stream()
                .sorted(Comparator.comparingDouble(Share::percent).reversed())
                .toList();
        Set<String> seen = new HashSet<>();
        for (Share share : shares) {
            if (!seen.add(share.fibre().key())) {
                throw Refused.of("blend", share.fibre().key() + " stands twice", "add its shares up to one");
            }
        }
        double sum = shares.stream().mapToDouble(Share::percent).sum();
        if (Math.abs(sum - 100) > SUM_TOLERANCE_PERCENT) {
            throw Refused.of(
                    "blend", "the shares sum to " + Words.exact(sum) + " %", "give shares that sum to 100 percent");
        }
    }

    /** Cloth of one fibre. */
    public static Blend pure(Fibre fibre) {
        return new Blend(List.of(new Share(fibre, 100)));
    }

    public double percentOf(FibreFamily family) {
        return percentWhere(family::equals);
    }

    /** Share that melts, or must be presumed to: the thermoplastic fibres and everything unnamed. */
    public double meltablePercent() {
        return percentWhere(FibreFamily::countsAsMeltable);
    }

    public double percentOf(String fibreKey) {
        return shares.stream()
                .filter(s -> s.fibre().key().equals(fibreKey))
                .mapToDouble(Share::percent)
                .sum();
    }

    /** Density of the fibre substance, g/cm3: masses over volumes, 1/rho = sum of w/rho. */
    public double densityGCm3() {
        return 100
                / shares.stream()
                        .mapToDouble(s -> s.percent() / s.fibre().densityGCm3().value())
                        .sum();
    }

    /** As on a label: {@code 65 % polyester, 35 % cotton}. */
    public String words() {
        return shares.stream()
                .map(s -> Words.number(s.percent()) + " % " + s.fibre().name())
                .collect(Collectors.joining(", "));
    }

    private double percentWhere(java.util.function.Predicate<FibreFamily> family) {
        return shares.stream()
                .filter(s -> family.test(s.fibre().family()))
                .mapToDouble(Share::percent)
                .sum();
    }
}
