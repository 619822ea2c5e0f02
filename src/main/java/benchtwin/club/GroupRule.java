package benchtwin.club;

/** How firmly the clubs of a group keep to one head model and one shaft model. */
public enum GroupRule implements Word {
    /** They share both models, or a club is left unbuilt. */
    MUST("must"),
    /** They share them where that costs less than it is worth. */
    PREFER("prefer");

    private final String word;

    GroupRule(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
