package benchtwin.ticket;

import java.util.List;

/**
 * What stands on one label.
 * @param tag   the tag; its code says just this, so that a scanner types the tag
 * @param lines what it is, in a few short lines, the first the most wanted
 */
public record Label(String tag, List<String> lines) {

    /**
     * Checks it.
     * @throws IllegalArgumentException when there is no tag
     */
    public Label {
        if (tag.isBlank()) {
            throw new IllegalArgumentException("a label needs a tag");
        }
        lines = List.copyOf(lines);
    }
}
