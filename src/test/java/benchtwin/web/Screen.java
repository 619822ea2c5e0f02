package benchtwin.web;

/** The two sizes every page is made for. */
enum Screen {
    /** A small laptop. */
    LAPTOP(1280, 800),
    /** A 10-inch tablet, lying. */
    TABLET(1024, 768);

    private final int widthPx;
    private final int heightPx;

    Screen(int widthPx, int heightPx) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    int widthPx() {
        return widthPx;
    }

    int heightPx() {
        return heightPx;
    }
}
