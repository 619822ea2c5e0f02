package benchtwin.web;

/** How a browser stands to the pages. */
public enum Standing {
    /** On this machine: whoever sits here may open the book without the pages too. */
    HERE,
    /** On another machine, and gave the passphrase. */
    SIGNED_IN,
    /** On another machine, and did not. */
    STRANGER
}
