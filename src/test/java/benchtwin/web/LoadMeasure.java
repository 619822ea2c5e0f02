package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.StockViews;
import benchtwin.samples.PastWorkshop;
import benchtwin.samples.SeasonBook;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * Clients that ask one page after the other, on the loopback address, of pages started here: how long each takes, and whether any goes
 * wrong. Takes the number of clients, the seconds, and perhaps the file of a season's book; without one the sample workshop's. A client waits for its
 * answer, as a person does, and asks again at once, as no person does. The first seconds warm up and do not count.
 */
public final class LoadMeasure {

    /** Of the sample workshop: a club whose head cracked, and a head. */
    private static final List<String> SAMPLES = pages("N.%20Oakes", "OAKES-DR", "H-110");
    private static final Duration WARM_UP = Duration.ofSeconds(15);
    private static final double NS_IN_MS = 1e6;

    private final Map<String, ConcurrentLinkedQueue<Long>> timesNs = new ConcurrentHashMap<>();
    private final ConcurrentLinkedQueue<String> wrong = new ConcurrentLinkedQueue<>();
    private final List<String> pages;

    private LoadMeasure(List<String> pages) {
        this.pages = pages;
    }

    /** What a bench asks for, the more often the more often it stands here; a match is what it is there for. */
    private static List<String> pages(String player, String club, String head) {
        return List.of("/", "/players", "/players/" + player, "/clubs/" + club, "/stock", "/stock?q=driver&free=yes", "/stock/" + head,
            "/find?q=" + head, "/clubs/" + club + "/twin", Assets.at("bench.css"));
    }

    /** Of a season's book: the club that came most often, its player, and the first head of its stock. */
    private static List<String> season(OpenBook book) throws BadInput {
        String head = StockViews.list(book, new StockViews.Asked(List.of("head"), List.of(), true, false)).get(0).tag();
        return pages("Player%20001", SeasonBook.FAVOURITE, head);
    }

    /** {@code LoadMeasure CLIENTS SECONDS [BOOK]}. */
    public static void main(String... words) throws IOException, BadInput, InterruptedException {
        int clients = Integer.parseInt(words[0]);
        Duration during = Duration.ofSeconds(Integer.parseInt(words[1]));
        Path file = words.length > 2 ? Path.of(words[2]) : Files.createTempDirectory("benchtwin-load").resolve("samples.book");
        if (words.length <= 2) {
            PastWorkshop.into(file);
        }
        OpenBook book = OpenBook.open(Optional.of(file), Optional.of("Jo"));
        List<String> pages = words.length > 2 ? season(book) : SAMPLES;
        try (BenchServer server = BenchServer.start(book, 0)) {
            new LoadMeasure(pages).ask(server.port(), clients, WARM_UP);
            LoadMeasure measured = new LoadMeasure(pages);
            measured.ask(server.port(), clients, during);
            measured.print();
        }
    }

    private void ask(int port, int clients, Duration during) throws InterruptedException {
        long end = System.nanoTime() + during.toNanos();
        List<Thread> threads = new ArrayList<>();
        for (int client = 0; client < clients; client++) {
            int first = client;
            Thread thread = new Thread(() -> client(port, first, end));
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
    }

    private void client(int port, int first, long end) {
        HttpClient http = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        for (int k = first; System.nanoTime() < end; k++) {
            String page = pages.get(k % pages.size());
            long began = System.nanoTime();
            try {
                HttpResponse<String> answer = http.send(HttpRequest.newBuilder(URI.create("http://localhost:%d%s".formatted(port, page))).build(),
                    BodyHandlers.ofString());
                timesNs.computeIfAbsent(page, any -> new ConcurrentLinkedQueue<>()).add(System.nanoTime() - began);
                if (answer.statusCode() >= 400) {
                    wrong.add(page + ": " + answer.statusCode());
                }
            } catch (IOException | InterruptedException failed) {
                wrong.add(page + ": " + failed);
            }
        }
    }

    private void print() {
        System.out.printf(Locale.ROOT, "%-28s %8s %10s %10s %10s%n", "page", "answers", "median ms", "99 % ms", "longest ms");
        List<Long> all = new ArrayList<>();
        for (String page : pages) {
            List<Long> times = List.copyOf(timesNs.getOrDefault(page, new ConcurrentLinkedQueue<>()));
            all.addAll(times);
            line(page, times);
        }
        line("all", all);
        System.out.printf("went wrong: %d%n", wrong.size());
        wrong.stream().distinct().limit(10).forEach(System.out::println);
    }

    private static void line(String name, List<Long> times) {
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        System.out.printf(Locale.ROOT, "%-28s %8d %10.1f %10.1f %10.1f%n", name, sorted.length, share(sorted, 0.5), share(sorted, 0.99), share(sorted, 1));
    }

    /** The smallest time that this share of the answers took at most, ms. */
    private static double share(long[] sorted, double share) {
        return sorted.length == 0 ? Double.NaN : sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)] / NS_IN_MS;
    }
}
