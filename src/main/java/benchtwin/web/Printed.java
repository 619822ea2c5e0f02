package benchtwin.web;

import io.javalin.http.Context;

/**
 * Answers with what is to be printed, shown in the browser. A PDF is drawn by the browser's own viewer, which styles itself and so
 * needs leave for that; a ticket as a page carries its styles, so that the file is whole wherever it is saved. Neither may run
 * a script or load anything.
 */
final class Printed {

    private static final String OF_PDF = "default-src 'none'; object-src 'self'; style-src 'unsafe-inline'; base-uri 'none'; "
        + "frame-ancestors 'none'";
    private static final String OF_PAGE = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; "
        + "frame-ancestors 'none'";

    private Printed() {
    }

    static void pdf(Context ctx, byte[] bytes, String name) {
        ctx.header("Content-Security-Policy", OF_PDF).header("Content-Disposition", "inline; filename=\"%s\"".formatted(name))
            .header("Cache-Control", "no-store").contentType("application/pdf").result(bytes);
    }

    static void page(Context ctx, byte[] bytes) {
        ctx.header("Content-Security-Policy", OF_PAGE).header("Cache-Control", "no-store").contentType("text/html; charset=utf-8")
            .result(bytes);
    }
}
