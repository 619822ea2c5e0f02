package benchtwin.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser without scripts: asks, posts with its token, follows redirects. */
final class Visit {

    private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");
    private static final String PARTING = "a-line-no-file-holds";

    private final WebBook pages;
    private final HttpClient client = HttpClient.newBuilder().cookieHandler(new CookieManager())
        .followRedirects(HttpClient.Redirect.NORMAL).build();
    private String token;

    /** At pages that are served by the time it asks for the first. */
    Visit(WebBook pages) {
        this.pages = pages;
    }

    URI uri(String path) {
        return URI.create(pages.url(path));
    }

    private String token() {
        if (token == null) {
            Matcher found = TOKEN.matcher(get("/").body());
            token = found.find() ? found.group(1) : "";
        }
        return token;
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<byte[]> bytes(String path) {
        return send(HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    /** Posts fields, a name and a value in turn. */
    HttpResponse<String> post(String path, String... fields) {
        StringJoiner form = new StringJoiner("&").add("token=" + encoded(token()));
        for (int i = 0; i < fields.length; i += 2) {
            form.add(encoded(fields[i]) + "=" + encoded(fields[i + 1]));
        }
        return send(HttpRequest.newBuilder(uri(path)).header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form.toString())).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Posts files, a name and a text in turn, as the field {@code files}. */
    HttpResponse<String> upload(String path, String... files) {
        StringBuilder form = new StringBuilder("--%s\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n%s\r\n".formatted(PARTING,
            token()));
        for (int i = 0; i < files.length; i += 2) {
            form.append("--%s\r\nContent-Disposition: form-data; name=\"files\"; filename=\"%s\"\r\nContent-Type: text/csv\r\n\r\n"
                .formatted(PARTING, files[i])).append(files[i + 1]).append("\r\n");
        }
        form.append("--").append(PARTING).append("--\r\n");
        return send(HttpRequest.newBuilder(uri(path)).header("Content-Type", "multipart/form-data; boundary=" + PARTING)
            .POST(HttpRequest.BodyPublishers.ofString(form.toString())).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Posts one file of any bytes as the field {@code files}. */
    HttpResponse<String> upload(String path, String file, byte[] content) {
        byte[] before = ("--%s\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n%s\r\n--%s\r\nContent-Disposition: form-data; name=\"files\"; "
            + "filename=\"%s\"\r\nContent-Type: text/csv\r\n\r\n").formatted(PARTING, token(), PARTING, file).getBytes(StandardCharsets.UTF_8);
        return send(HttpRequest.newBuilder(uri(path)).header("Content-Type", "multipart/form-data; boundary=" + PARTING)
            .POST(HttpRequest.BodyPublishers.concat(HttpRequest.BodyPublishers.ofByteArray(before), HttpRequest.BodyPublishers.ofByteArray(content),
                HttpRequest.BodyPublishers.ofString("\r\n--" + PARTING + "--\r\n"))).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpClient client() {
        return client;
    }

    private <T> HttpResponse<T> send(HttpRequest request, HttpResponse.BodyHandler<T> as) {
        try {
            return client.send(request, as);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
