package benchtwin.picture;

/** Whether this machine can measure and write text at all; a bare server often has no fonts. */
final class Fonts {

    private Fonts() {
    }

    /**
     * Makes sure of it, before anything is drawn.
     * @throws IllegalStateException with what to do about it
     */
    static void require() {
        boolean found;
        try {
            found = Look.TEXT.getStringBounds("252.0 cpm", Look.MEASURE).getWidth() > 0;
        } catch (RuntimeException | LinkageError | InternalError notThere) {
            // without a font set-up the JDK fails in any of these ways, by version and by what is missing
            found = false;
        }
        if (!found) {
            throw new IllegalStateException("pictures need a font, and Java finds none on this machine; install one"
                + " (on Debian: fontconfig and fonts-dejavu-core), or ask for the table without the picture");
        }
    }
}
