package benchtwin.web;

/** Where a page may send a browser next: to one of these pages and nowhere else. */
final class OwnPath {

    private OwnPath() {
    }

    /**
     * A path of ours as it is; the first page for anything else. Browsers leave out line ends and tabs and take a backslash for a
     * slash, so none of these may be in it: {@code /\t/elsewhere} would be another machine.
     */
    static String of(String path) {
        boolean plain = path.chars().allMatch(sign -> sign > ' ' && sign < 0x7f && sign != '\\');
        return plain && path.startsWith("/") && !path.startsWith("//") ? path : "/";
    }
}
