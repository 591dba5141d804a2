package campcloth.comfort;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;

/**
 * A model that takes nothing from the clothing but its insulation, between runs of it at even steps. What is told is a straight line
 * between two steps where that meets the model in the middle; elsewhere, and where the model does not hold at one of the steps, the
 * model is run. May be shared between threads.
 *
 * @param <T> what the model tells
 */
final class InsulationLattice<T> {

    /** How what the model tells is mixed and compared. */
    interface Mixing<T> {

        /** From one (share 0) to the other (share 1). */
        T between(T one, T other, double share);

        /** Whether both are as good as the same. */
        boolean agree(T one, T other);
    }

    private final double step;
    private final DoubleFunction<Optional<T>> model;
    private final Mixing<T> mixing;
    private final Map<Integer, Optional<T>> ends = new ConcurrentHashMap<>();
    private final Map<Integer, Optional<Piece<T>>> pieces = new ConcurrentHashMap<>();

    /**
     * @param step of the insulation, in the unit of the model
     * @param model empty where it does not hold
     */
    InsulationLattice(double step, DoubleFunction<Optional<T>> model, Mixing<T> mixing) {
        this.step = step;
        this.model = model;
        this.mixing = mixing;
    }

    /** Empty where the model itself must be asked. */
    Optional<T> at(double insulation) {
        double u = insulation / step;
        int i = (int) Math.floor(u);
        return pieces.computeIfAbsent(i, this::piece).map(piece -> mixing.between(piece.one, piece.other, u - i));
    }

    private Optional<Piece<T>> piece(int i) {
        return end(i).flatMap(one -> end(i + 1)
                .filter(other -> model.apply((i + 0.5) * step)
                        .filter(middle -> mixing.agree(mixing.between(one, other, 0.5), middle))
                        .isPresent())
                .map(other -> new Piece<>(one, other)));
    }

    private Optional<T> end(int i) {
        return ends.computeIfAbsent(i, k -> model.apply(k * step));
    }

    private record Piece<T>(T one, T other) {}
}
