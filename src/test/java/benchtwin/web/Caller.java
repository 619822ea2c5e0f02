package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without a screen: keeps cookies, knows its token, follows no redirect by itself. */
final class Caller {

    private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]*)\"");
    private static final String FORM = "application/x-www-form-urlencoded";

    private final WebBook pages;
    private final List<String> headers;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder().cookieHandler(cookies).build();
    private String token = "";

    private Caller(WebBook pages, List<String> headers) {
        this.pages = pages;
        this.headers = headers;
    }

    /** On this machine. */
    static Caller here(WebBook pages) {
        return new Caller(pages, List.of());
    }

    /** On another machine: what is passed on by a program on this one is never taken for this one. */
    static Caller elsewhere(WebBook pages) {
        return new Caller(pages, List.of("X-Forwarded-For", "192.0.2.7"));
    }

    /** Opens a page; keeps the token its forms carry. */
    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        HttpResponse<String> page = send("GET", path, BodyPublishers.noBody());
        Matcher found = TOKEN.matcher(page.body());
        if (found.find()) {
            token = found.group(1);
        }
        return page;
    }

    /** The same as a script asks for a part of a page. */
    HttpResponse<String> part(String path) throws IOException, InterruptedException {
        return send("GET", path, BodyPublishers.noBody(), "HX-Request", "true");
    }

    /** Sends a form as the page that was opened last would. */
    HttpResponse<String> post(String path, Map<String, String> fields) throws IOException, InterruptedException {
        return post(path, List.copyOf(fields.entrySet()));
    }

    /** The same where a field stands several times. */
    HttpResponse<String> post(String path, List<Map.Entry<String, String>> fields) throws IOException, InterruptedException {
        String body = "token=" + encoded(token) + fields.stream().map(field -> "&" + encoded(field.getKey()) + "="
            + encoded(field.getValue())).collect(Collectors.joining());
        return send("POST", path, BodyPublishers.ofString(body), "Content-Type", FORM);
    }

    /** Sends anything. */
    HttpResponse<String> send(String method, String path, BodyPublisher body, String... more) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(pages.url(path))).method(method, body);
        for (List<String> some : List.of(headers, List.of(more))) {
            for (int k = 0; k < some.size(); k += 2) {
                request.header(some.get(k), some.get(k + 1));
            }
        }
        HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
        assertThat(answer.body()).as("no stack trace may come back").doesNotContain("\tat ", "at benchtwin.", "Exception:");
        return answer;
    }

    /** What forms it was shown carry. */
    String token() {
        return token;
    }

    /** What the cookie says of who it is. */
    String identity() {
        return cookies.getCookieStore().getCookies().stream().filter(cookie -> cookie.getName().startsWith("benchtwin")).findFirst()
            .orElseThrow().getValue();
    }

    /** What the first group of a pattern finds on a page. */
    static String first(Pattern pattern, String page) {
        Matcher found = pattern.matcher(page);
        assertThat(found.find()).as(pattern + " on the page").isTrue();
        return found.group(1);
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
