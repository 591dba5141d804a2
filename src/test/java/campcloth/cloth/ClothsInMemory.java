package campcloth.cloth;

import campcloth.access.Holding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A catalogue that cannot be changed; every search finds everything, but for a page, which goes by the name and counts no facets. */
public final class ClothsInMemory implements Cloths {

    private final Map<String, KeptCloth> cloths = new LinkedHashMap<>();
    private Optional<ClothColumns> rows = Optional.empty();

    public ClothsInMemory(Map<String, Cloth> all) {
        all.forEach((id, cloth) -> cloths.put(id, new KeptCloth(id, 0, KeptCloth.Origin.OWN, cloth, Holding.COMMON)));
    }

    public ClothsInMemory(Collection<KeptCloth> all) {
        all.forEach(kept -> cloths.put(kept.id(), kept));
    }

    @Override
    public Optional<KeptCloth> byId(String id) {
        return Optional.ofNullable(cloths.get(id));
    }

    @Override
    public List<KeptCloth> byIds(Collection<String> ids) {
        return ids.stream().flatMap(id -> byId(id).stream()).toList();
    }

    @Override
    public List<KeptCloth> matching(ClothSearch search) {
        return List.copyOf(cloths.values());
    }

    @Override
    public ClothColumns columns(ClothSearch search) {
        if (rows.isEmpty()) {
            rows = Optional.of(new Rows(List.copyOf(cloths.values())));
        }
        return rows.get();
    }

    @Override
    public Page page(ClothSearch search, int page, int size) {
        String text = search.text().orElse("").toLowerCase(Locale.ROOT);
        List<KeptCloth> found = cloths.values().stream()
                .filter(kept -> kept.cloth().name().toLowerCase(Locale.ROOT).contains(text))
                .toList();
        ClothFacets.Facet none = new ClothFacets.Facet(List.of(), 0);
        return new Page(
                found.stream().skip((long) page * size).limit(size).toList(),
                found.size(),
                false,
                new ClothFacets(none, none, none, none, new ClothFacets.Prices(Optional.empty(), Optional.empty(), 0)));
    }

    @Override
    public KeptCloth add(Cloth cloth) {
        throw new UnsupportedOperationException("these cloths are for reading alone");
    }

    @Override
    public Change replace(String id, long expectedVersion, Cloth cloth) {
        throw new UnsupportedOperationException("these cloths are for reading alone");
    }

    @Override
    public Change remove(String id, long expectedVersion) {
        throw new UnsupportedOperationException("these cloths are for reading alone");
    }

    private static final class Rows implements ClothColumns {

        private final List<KeptCloth> kept;
        private final List<ClothInNumbers> numbers;
        private final List<ClothMake> makes = new ArrayList<>();
        private final int[] make;

        Rows(List<KeptCloth> kept) {
            this.kept = kept;
            this.numbers = kept.parallelStream()
                    .map(one -> ClothInNumbers.of(one.cloth()))
                    .toList();
            this.make = new int[kept.size()];
            Map<ClothMake, Integer> known = new LinkedHashMap<>();
            for (int row = 0; row < make.length; row++) {
                make[row] = known.computeIfAbsent(numbers.get(row).make(), of -> {
                    makes.add(of);
                    return makes.size() - 1;
                });
            }
        }

        @Override
        public int rows() {
            return kept.size();
        }

        @Override
        public boolean holds(int row) {
            return true;
        }

        @Override
        public String id(int row) {
            return kept.get(row).id();
        }

        @Override
        public int make(int row) {
            return make[row];
        }

        @Override
        public int makes() {
            return makes.size();
        }

        @Override
        public ClothMake makeNumbered(int number) {
            return makes.get(number);
        }

        @Override
        public double weightGsm(int row) {
            return numbers.get(row).weightGsm();
        }

        @Override
        public double leastGsm(int row) {
            return numbers.get(row).leastGsm();
        }

        @Override
        public boolean massIsEstimated(int row) {
            return numbers.get(row).massIsEstimated();
        }

        @Override
        public double thicknessMm(int row) {
            return numbers.get(row).thicknessMm();
        }

        @Override
        public double permeabilityMmS(int row) {
            return numbers.get(row).permeabilityMmS();
        }

        @Override
        public double vapourResistanceM2PaW(int row) {
            return numbers.get(row).vapourResistanceM2PaW();
        }

        @Override
        public double coarseEndsPercent(int row) {
            return numbers.get(row).coarseEndsPercent();
        }

        @Override
        public double bastRoughness(int row) {
            return numbers.get(row).bastRoughness();
        }

        @Override
        public boolean thicknessIsKnown(int row) {
            return numbers.get(row).thicknessIsKnown();
        }

        @Override
        public Bases bases(int row) {
            return Bases.of(kept.get(row).cloth());
        }

        @Override
        public KeptCloth.Origin origin(int row) {
            return kept.get(row).origin();
        }

        @Override
        public boolean permeabilityIsKnown(int row) {
            return numbers.get(row).permeabilityIsKnown();
        }
    }
}
