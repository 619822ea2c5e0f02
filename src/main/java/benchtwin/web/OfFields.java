package benchtwin.web;

/** What a service says of options of the command line, said of a page's fields. */
final class OfFields {

    private OfFields() {
    }

    static String said(String message) {
        return message.replace("use --keep none", "choose that it keeps nothing")
            .replaceAll("(,|:| with)? --([a-z-]+)( [A-Z]+| \"[A-Z]+\"| [0-9.]+)?(?=$|[ ,;.])", " in the field “$2”");
    }
}
