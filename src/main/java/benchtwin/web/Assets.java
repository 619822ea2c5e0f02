package benchtwin.web;

import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Styles and scripts, all out of the program's own file. Only what is listed is served. The address of each holds a fingerprint of
 * what is in it, so a browser may keep it for good and still never shows an older one after the program was renewed.
 */
final class Assets implements Routes {

    private static final String FOLDER = "/assets/";
    private static final String STYLES = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    /** A year, and no question in between. Published: RFC 8246. */
    private static final String FOR_GOOD = "max-age=31536000, immutable";
    /** 64 bits: two contents of one name do not share these by chance. */
    private static final int FINGERPRINT_BYTES = 8;
    private static final Map<String, Asset> BY_NAME = Stream.of(
        Asset.of("bench.css", "/benchtwin/web/bench.css", STYLES),
        Asset.of("pad.js", "/benchtwin/web/pad.js", SCRIPT),
        Asset.of("scan.js", "/benchtwin/web/scan.js", SCRIPT),
        Asset.of("bench.js", "/benchtwin/web/bench.js", SCRIPT),
        Asset.of("live.js", "/benchtwin/web/live.js", SCRIPT),
        Asset.of("htmx.js", "/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js", SCRIPT))
        .collect(Collectors.toMap(Asset::name, Function.identity()));

    private record Asset(String name, String path, String type, byte[] content) {

        static Asset of(String name, String resource, String type) {
            byte[] content = read(resource);
            int ending = name.lastIndexOf('.');
            return new Asset(name, "%s%s-%s%s".formatted(FOLDER, name.substring(0, ending), fingerprint(content), name.substring(ending)),
                type, content);
        }
    }

    @Override
    public void add(RoutesConfig routes) {
        BY_NAME.values().forEach(asset -> routes.get(asset.path(), ctx ->
            ctx.contentType(asset.type()).header("Cache-Control", FOR_GOOD).result(asset.content())));
        routes.get("/favicon.ico", ctx -> ctx.status(204));
    }

    /**
     * Where one lies.
     * @param name without its folder, such as {@code bench.css}
     */
    static String at(String name) {
        return BY_NAME.get(name).path();
    }

    /** The name of each. */
    static Collection<String> names() {
        return BY_NAME.keySet();
    }

    /** Whether one of them lies under this path. */
    static boolean isListed(String path) {
        return BY_NAME.values().stream().anyMatch(asset -> asset.path().equals(path));
    }

    /** The beginning of its SHA-256, in small letters. */
    static String fingerprint(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content), 0, FINGERPRINT_BYTES);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
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
