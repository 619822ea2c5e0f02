package benchtwin.picture;

import benchtwin.measure.Units;
import java.util.OptionalDouble;

/**
 * One club of a set by its length.
 * @param club           the club and its frequency, cpm
 * @param lengthMm       its playing length as built, mm; empty when it is not known or the club is not built
 * @param targetLengthMm the playing length its target holds for, mm; empty when that is the length as built
 */
public record FrequencyPoint(SetPoint club, OptionalDouble lengthMm, OptionalDouble targetLengthMm) {

    /**
     * Checks the numbers.
     * @throws IllegalArgumentException naming the club and the number that cannot be
     */
    public FrequencyPoint {
        lengthMm.ifPresent(mm -> Words.positive("club " + club.club() + ": a length", mm));
        targetLengthMm.ifPresent(mm -> Words.positive("club " + club.club() + ": a length wanted", mm));
        club.value().ifPresent(cpm -> Words.positive("club " + club.club() + ": a frequency", cpm));
        club.target().ifPresent(target -> Words.positive("club " + club.club() + ": a target", target.value()));
    }

    OptionalDouble lengthIn() {
        return inches(lengthMm);
    }

    OptionalDouble targetLengthIn() {
        return inches(targetLengthMm.isPresent() ? targetLengthMm : lengthMm);
    }

    /** Whether it has a dot: both its frequency and its length are known. */
    boolean isPlaced() {
        return club.value().isPresent() && lengthMm.isPresent();
    }

    /** Whether its target has a place. */
    boolean hasTargetPlace() {
        return club.target().isPresent() && targetLengthIn().isPresent();
    }

    private static OptionalDouble inches(OptionalDouble mm) {
        return mm.isPresent() ? OptionalDouble.of(Units.inches(mm.getAsDouble())) : mm;
    }
}
