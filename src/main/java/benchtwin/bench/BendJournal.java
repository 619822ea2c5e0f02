package benchtwin.bench;

import benchtwin.bend.Bend;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendTrial;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where bends are written down, each as it is done, and found again. */
public sealed interface BendJournal permits BookBends, BendFile {

    /**
     * A bend on record.
     * @param id        its number in the record
     * @param head      the head's tag
     * @param model     the head's model
     * @param direction which way it was asked
     * @param trial     what was asked and got
     * @param targetDeg where the head was to go
     */
    record Kept(long id, String head, String model, BendDirection direction, BendTrial trial, Map<Quantity, Double> targetDeg) {

        /** Copies what it is given. */
        public Kept {
            targetDeg = Map.copyOf(targetDeg);
        }
    }

    /**
     * How a session's entries are made.
     * @param head      the head's tag
     * @param targetDeg where it is to go
     * @param readingDeg standard uncertainty of a reading, by angle
     * @param reading   how the angles are read, in a word
     * @param gauge     what they are read on
     */
    record Of(String head, Map<Quantity, Double> targetDeg, Map<Quantity, Double> readingDeg, String reading, Optional<String> gauge) {
    }

    /**
     * Every bend on record, those that were put right left out.
     * @return oldest first
     * @throws BadInput when the record cannot be read
     */
    List<Kept> bends() throws BadInput;

    /**
     * What the record adds to how a head is found in the stock: angles read and metal used in sessions since.
     * @param head the head's tag
     * @return readings and tilt
     * @throws BadInput when the record cannot be read
     */
    Since since(String head) throws BadInput;

    /**
     * What befell a head in sessions.
     * @param readDeg    angles read last
     * @param bentDeg    tilt used, by direction
     */
    record Since(Map<Quantity, Double> readDeg, Map<BendDirection, Double> bentDeg) {

        static final Since NOTHING = new Since(Map.of(), Map.of());
    }

    /**
     * Writes down angles read before a bend.
     * @param of      of the session
     * @param readDeg the angles
     * @throws BadInput when nothing can be written
     */
    void read(Of of, Map<Quantity, Double> readDeg) throws BadInput;

    /**
     * Writes down who answers for bending a head that the program would not.
     * @param of    of the session
     * @param words in the technician's words
     * @throws BadInput when nothing can be written
     */
    void answered(Of of, String words) throws BadInput;

    /**
     * Writes down a bend.
     * @param of        of the session
     * @param bend      what was done
     * @param readDeg   the angles that were read, not worked out
     * @param insteadOf the bend whose entry was mistyped, with what that said
     * @return its number in the record
     * @throws BadInput when nothing can be written
     */
    long bent(Of of, Bend bend, Map<Quantity, Double> readDeg, Optional<Mistyped> insteadOf) throws BadInput;

    /**
     * An entry that is put right.
     * @param id   its number in the record
     * @param bend what it said
     */
    record Mistyped(long id, Bend bend) {
    }

    /**
     * Where the record lies, in words.
     * @return for instance {@code the book}
     */
    String place();
}
