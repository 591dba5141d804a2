package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Breaks a sound layout in every way and expects each to be told. */
class VerificationTest {

    private static final List<Piece> PIECES = List.of(
            new Piece("half", Outline.rectangle(60, 50), 2, false, false, false),
            new Piece("sleeve", RandomPieces.trapezoid(60, 40, 40), 2, true, false, true));
    private static final Strip STRIP = Strip.ofWidth(120);

    private static Layout broken(int at, Placement instead) {
        Layout sound = Nesting.layout(STRIP, PIECES, new Effort(0.05, 1));
        assertThat(Verification.faults(sound)).isEmpty();
        List<Placement> placements = new ArrayList<>(sound.placements());
        placements.set(at, instead);
        return new Layout(STRIP, PIECES, 90, sound.lowerBoundCm(), sound.usedPercent(), placements);
    }

    @Test
    void overlapIsTold() {
        Placement first = broken(1, new Placement("half", 2, 0, 0, false, false))
                .placements()
                .get(0);
        Layout layout = broken(1, new Placement("half", 2, Math.abs(first.xCm() - 59.9), first.yCm(), false, false));
        assertThat(Verification.faults(layout)).anyMatch(fault -> fault.contains("share"));
    }

    @Test
    void overTheEdgeIsTold() {
        assertThat(Verification.faults(broken(0, new Placement("half", 1, 60.1, 0, false, false))))
                .anyMatch(fault -> fault.contains("edge"));
        assertThat(Verification.faults(broken(0, new Placement("half", 1, 0, 80, false, false))))
                .anyMatch(fault -> fault.contains("edge"));
    }

    @Test
    void forbiddenTurnsAndMirroringsAreTold() {
        assertThat(Verification.faults(broken(0, new Placement("half", 1, 0, 0, true, false))))
                .anyMatch(fault -> fault.contains("nap"));
        assertThat(Verification.faults(broken(3, new Placement("sleeve", 2, 0, 0, false, false))))
                .anyMatch(fault -> fault.contains("not mirrored"));
    }

    @Test
    void missingAndDoubledCopiesAreTold() {
        assertThat(Verification.faults(broken(1, new Placement("half", 1, 0, 0, false, false))))
                .isNotEmpty();
        assertThat(Verification.faults(broken(1, new Placement("hood", 1, 0, 0, false, false))))
                .isNotEmpty();
        Layout sound = Nesting.layout(STRIP, PIECES, new Effort(0.05, 1));
        Layout short1 = new Layout(
                STRIP,
                PIECES,
                sound.lengthCm(),
                sound.lowerBoundCm(),
                50,
                sound.placements().subList(0, 3));
        assertThat(Verification.faults(short1)).isNotEmpty();
    }

    @Test
    void lengthBelowTheBoundIsTold() {
        Layout sound = Nesting.layout(STRIP, PIECES, new Effort(0.05, 1));
        Layout boast = new Layout(STRIP, PIECES, 60, sound.lowerBoundCm(), 50, sound.placements());
        assertThat(Verification.faults(boast)).anyMatch(fault -> fault.contains("bound"));
    }
}
