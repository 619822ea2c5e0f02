package benchtwin.picture;

import java.awt.Graphics2D;
import java.util.function.Consumer;

/** What a drawing is put on. */
interface Sheet {

    /**
     * Draws one part on top of what is there.
     * @param name what the part is, in lower case with hyphens, for instance {@code trimmed-dot}; unique where the part is
     * @param part draws it
     */
    void part(String name, Consumer<Graphics2D> part);
}
