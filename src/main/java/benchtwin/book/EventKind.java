package benchtwin.book;

import benchtwin.club.Word;

/** What can befall a thing. The word stands in the file and stays. */
public enum EventKind implements Word {
    /** Came into the record, with what is known of it. */
    RECEIVED("received"),
    /** Something known of it was put down anew. */
    DESCRIBED("described"),
    /** Was measured. */
    MEASURED("measured"),
    /** A reading of it was put right; the new reading names the old one. */
    CORRECTED("corrected"),
    /** Was put somewhere else. */
    MOVED("moved"),
    /** Was promised to a job or a person. */
    PROMISED("promised"),
    /** Is no longer promised. */
    RELEASED("released"),
    /** Was built into a club. */
    BUILT_IN("built in"),
    /** Was taken out of a club. */
    PULLED("pulled"),
    /** Was bent. */
    BENT("bent"),
    /** Was ground. */
    GROUND("ground"),
    /** Left the stock. */
    RETIRED("retired"),
    /** Came back into the stock. */
    RETURNED("returned"),
    /** Was counted. */
    COUNTED("counted"),
    /** Of a club: measured, and what it measured is what it should. */
    RECORDED("recorded"),
    /** Of a club: measured as it came to the bench. */
    FOUND("found"),
    /** Of a job: its plan was chosen. */
    PLANNED("planned"),
    /** Of a job: built and handed over. */
    HANDED_OVER("handed over"),
    /** Of a job: will not be done. */
    CALLED_OFF("called off"),
    /** Of a gauge: a figure worked out from its readings is used from now on. */
    ACCEPTED("accepted"),
    /** Of a gauge: was checked. */
    CHECKED("checked");

    private final String word;

    EventKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
