package benchtwin.web;

import java.util.Map;
import java.util.function.BiConsumer;

/** What every answer says about itself, faults included. */
final class SafeHeaders {

    private static final Map<String, String> ALL = Map.of(
        "Content-Security-Policy", Guard.POLICY,
        "X-Content-Type-Options", "nosniff",
        "Referrer-Policy", "same-origin",
        "Cross-Origin-Opener-Policy", "same-origin",
        "Cross-Origin-Resource-Policy", "same-origin",
        "Cache-Control", "no-store");

    private SafeHeaders() {
    }

    static void all(BiConsumer<String, String> answer) {
        ALL.forEach(answer);
    }
}
