package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.MatchService;
import benchtwin.bench.OpenBook;
import benchtwin.bench.QuantityList;
import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.measure.PlainNumber;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** What the page that finds a twin was asked: its fields, and the wish they make. */
public final class MatchForm {

    private static final String READ = "read:";
    private static final int USUAL_TOP = 5;
    private static final int MOST_TOP = 20;
    private static final double TWO_WEEKS_MINUTES = 14 * 24 * 60;

    private final String tag;
    private final Form form;
    private final Keep keep;
    private final int top;
    private final Set<String> without = new LinkedHashSet<>();
    private final ToleranceFields tolerances;
    private final OptionalDouble minutes;
    private final Optional<Double> cureMinutes;
    private final Map<String, String> readFields = new TreeMap<>();
    private final Map<String, Map<Quantity, Double>> readings = new LinkedHashMap<>();

    private MatchForm(OpenBook book, Context ctx) throws BadInput {
        tag = ctx.pathParam("tag");
        form = Form.query(ctx);
        keep = form.choice("keep", "keep", MatchPages.keeps().toArray(Keep[]::new)).orElse(Keep.SHAFT);
        double shown = form.number("top", "how many").orElse((double) USUAL_TOP);
        if (!(shown >= 1 && shown <= MOST_TOP && shown == Math.rint(shown))) {
            throw new BadInput("how many: expected 1 to %d".formatted(MOST_TOP));
        }
        top = (int) shown;
        Arrays.stream(form.text("without").orElse("").split("[,;\\s]+")).filter(text -> !text.isEmpty()).forEach(without::add);
        form.text("leaveOut").ifPresent(without::add);
        tolerances = ToleranceFields.of(book, tag, form, Quantity.targetable());
        Optional<String> due = form.text("due");
        minutes = due.isPresent() ? OptionalDouble.of(JobBook.minutesUntil(book, due.get())) : OptionalDouble.empty();
        cureMinutes = form.number("cure", "cure of the resin");
        if (cureMinutes.isPresent() && !(cureMinutes.get() >= 0 && cureMinutes.get() <= TWO_WEEKS_MINUTES)) {
            throw new BadInput("cure of the resin: expected 0 to 20160 minutes (two weeks)");
        }
        for (String name : ctx.queryParamMap().keySet()) {
            if (name.startsWith(READ)) {
                form.text(name).ifPresent(typed -> readFields.put(name, typed));
            }
        }
        for (Map.Entry<String, String> one : readFields.entrySet()) {
            read(one.getKey().substring(READ.length()), one.getValue());
        }
    }

    static MatchForm of(OpenBook book, Context ctx) throws BadInput {
        return new MatchForm(book, ctx);
    }

    private void read(String of, String typed) throws BadInput {
        int colon = of.lastIndexOf(':');
        if (colon < 1) {
            throw new BadInput("\"%s\" names no head and quantity".formatted(of));
        }
        String head = of.substring(0, colon);
        String item = of.substring(colon + 1) + "=" + typed.replace(',', '.').replace('−', '-').replace("°", "");
        readings.computeIfAbsent(head, one -> new EnumMap<>(Quantity.class)).putAll(QuantityList.OF_CLUBS.values("read on " + head, item));
    }

    MatchService.Wish wish() {
        ShopSettings shop = cureMinutes.map(ShopSettings.DEFAULT::withCureMinutes).orElse(ShopSettings.DEFAULT);
        return new MatchService.Wish(keep, form.isTicked("otherModels"), top, new Tolerances(tolerances.all(), Map.of()), shop, minutes,
            readings, without);
    }

    /** All of it, for addresses. */
    Asked asked() {
        return Asked.of(form, List.of("keep", "otherModels", "top", "due", "cure")).with("without", withoutText()).with(tolerances.typed())
            .with(readFields);
    }

    /**
     * The same question with one more part left out.
     * @param part its tag
     * @return an address
     */
    public String leavingOut(String part) {
        return asked().with("leaveOut", part).at("/clubs/" + FindPages.encoded(tag) + "/twin");
    }

    /** Whether a part was left out just now, by its button. */
    boolean isLeavingOut() {
        return form.text("leaveOut").isPresent();
    }

    /**
     * The club.
     * @return its tag, as it was typed
     */
    public String tag() {
        return tag;
    }

    /**
     * What the twin keeps.
     * @return shaft, head or none
     */
    public Keep keep() {
        return keep;
    }

    /**
     * Where its options' numbers are accounted for.
     * @return addresses
     */
    public HowAddress how() {
        return new HowAddress("/clubs/" + FindPages.encoded(tag) + "/twin", query());
    }

    /**
     * What was asked, for an address.
     * @return a query; empty for nothing
     */
    public String query() {
        return asked().query();
    }

    /**
     * A field as it was typed.
     * @param name of the field
     * @return empty when it was not filled in
     */
    public String text(String name) {
        return form.text(name).orElse("");
    }

    /**
     * Whether a box is ticked.
     * @param name of the field
     * @return true when it is
     */
    public boolean isTicked(String name) {
        return form.isTicked(name);
    }

    /**
     * What is left out.
     * @return tags with commas between them
     */
    public String withoutText() {
        return String.join(", ", without);
    }

    /**
     * How many are shown.
     * @return 1 or more
     */
    public int top() {
        return top;
    }

    /**
     * The tolerance of a quantity, as its field shows it.
     * @param quantity which
     * @return what the player prefers or was typed; empty for the usual one
     */
    public String tolerance(Quantity quantity) {
        return Optional.ofNullable(tolerances.all().get(quantity)).map(PlainNumber::text).orElse("");
    }

    /**
     * What was typed as read on a head.
     * @param head     its tag
     * @param quantity which quantity
     * @return as typed; empty for nothing
     */
    public String read(String head, Quantity quantity) {
        return readFields.getOrDefault(READ + head + ":" + quantity.word(), "");
    }
}
