package benchtwin.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without scripts: cookies, links and plain forms. */
final class Visitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private final WebBook pages;
    private final HttpClient client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    Visitor(WebBook pages) {
        this.pages = pages;
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(pages.url(path))).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** The same as htmx asks for a part of a page. */
    HttpResponse<String> part(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(pages.url(path))).header("HX-Request", "true").build(),
            HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, List<Map.Entry<String, String>> fields) throws IOException, InterruptedException {
        String body = fields.stream().map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue())).collect(Collectors.joining("&"));
        return client.send(HttpRequest.newBuilder(URI.create(pages.url(path))).header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body)).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** The token a page's forms carry. */
    static String token(String page) {
        return first(TOKEN, page);
    }

    static String first(Pattern pattern, String page) {
        Matcher found = pattern.matcher(page);
        if (!found.find()) {
            throw new AssertionError(pattern + " is not on the page");
        }
        return found.group(1);
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
