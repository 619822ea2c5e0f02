package benchtwin.web;

import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/** Styles and scripts, all out of the program's own file. Only what is listed is served. */
final class Assets implements Routes {

    private record Asset(String resource, String type) {
    }

    private static final String FOLDER = "/assets";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final Map<String, Asset> LISTED = Map.of(
        "/bench.css", new Asset("/benchtwin/web/bench.css", "text/css; charset=utf-8"),
        "/pad.js", new Asset("/benchtwin/web/pad.js", SCRIPT),
        "/scan.js", new Asset("/benchtwin/web/scan.js", SCRIPT),
        "/bench.js", new Asset("/benchtwin/web/bench.js", SCRIPT),
        "/live.js", new Asset("/benchtwin/web/live.js", SCRIPT),
        "/htmx.js", new Asset("/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js", SCRIPT));

    @Override
    public void add(RoutesConfig routes) {
        LISTED.forEach((path, asset) -> {
            byte[] bytes = read(asset.resource());
            routes.get(FOLDER + path, ctx -> ctx.contentType(asset.type()).header("Cache-Control", "max-age=3600").result(bytes));
        });
        routes.get("/favicon.ico", ctx -> ctx.status(204));
    }

    /** Whether one of them lies under this path. */
    static boolean isListed(String path) {
        return path.startsWith(FOLDER) && LISTED.containsKey(path.substring(FOLDER.length()));
    }

    private static byte[] read(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is not in the program's file");
            }
            return in.readAllBytes();
        } catch (IOException cannot) {
            throw new UncheckedIOException(cannot);
        }
    }
}
