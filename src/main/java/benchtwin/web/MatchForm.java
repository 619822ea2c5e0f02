package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.MatchService;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.bench.QuantityList;
import benchtwin.bench.Workshop;
import benchtwin.club.Quantity;
import benchtwin.match.Favourite;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.ShopSettings;
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

/** What a page that finds a twin was asked, of a club or of a target written out: its fields, and the wish they make. */
public final class MatchForm {

    /** Where a target is written out. */
    static final String WRITTEN = "/target";
    private static final String READ = "read:";
    private static final String READINGS = "readings";
    private static final int USUAL_TOP = 5;
    private static final int MOST_TOP = 20;
    private static final List<String> ASKED = List.of("keep", "otherModels", "top", "due", "job");

    private final Fields fields;
    private final Optional<String> club;
    private final Optional<TargetForm> target;
    private final Keep keep;
    private final int top;
    private final Set<String> without = new LinkedHashSet<>();
    private final ToleranceFields tolerances;
    private final OptionalDouble minutes;
    private final ShopSettings shop;
    private final Map<String, String> readFields = new TreeMap<>();
    private final Map<String, Map<Quantity, Double>> readings = new LinkedHashMap<>();

    private MatchForm(OpenBook book, Context ctx, Optional<String> club, Map<Quantity, Double> preferred) {
        this.club = club;
        fields = Fields.of(ctx);
        keep = keep(club.isPresent() ? Keep.SHAFT : Keep.NONE);
        target = club.isPresent() ? Optional.empty() : Optional.of(TargetForm.of(fields, keep));
        top = fields.whole("top", "how many", USUAL_TOP, MOST_TOP);
        Arrays.stream(fields.text("without").split("[,;\\s]+")).filter(text -> !text.isEmpty()).forEach(without::add);
        fields.form().text("leaveOut").ifPresent(without::add);
        tolerances = ToleranceFields.of(fields, preferred, Quantity.targetable());
        if (target.filter(one -> one.isFrequencyOfAnything(keep)).isPresent() && tolerances.isNotRanked(Quantity.LENGTH)) {
            fields.refuse(ToleranceFields.weight(Quantity.LENGTH), "a frequency is wanted at a length: where nothing is kept, its weight is above 0");
        }
        minutes = fields.at("due", OptionalDouble.empty(), form -> form.text("due").isEmpty() ? OptionalDouble.empty()
            : OptionalDouble.of(JobBook.minutesUntil(book, form.text("due").get())));
        shop = ShopFields.of(fields);
        for (String name : ctx.queryParamMap().keySet()) {
            if (name.startsWith(READ)) {
                fields.form().text(name).ifPresent(typed -> readFields.put(name, typed));
            }
        }
        readFields.forEach((name, typed) -> fields.at(READINGS, null, form -> read(name.substring(READ.length()), typed)));
    }

    /** About a club. */
    static MatchForm ofClub(OpenBook book, Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        return new MatchForm(book, ctx, Optional.of(tag), PlayerBook.tolerancesFor(book, tag));
    }

    /** From a target written out. */
    static MatchForm ofTarget(OpenBook book, Context ctx) {
        return new MatchForm(book, ctx, Optional.empty(), Map.of());
    }

    private Keep keep(Keep usual) {
        return fields.at("keep", usual, form -> form.choice("keep", "keep", MatchPages.keeps().toArray(Keep[]::new)).orElse(usual));
    }

    private Void read(String of, String typed) throws BadInput {
        int colon = of.lastIndexOf(':');
        if (colon < 1) {
            throw new BadInput("\"%s\" names no head and quantity".formatted(of));
        }
        String head = of.substring(0, colon);
        String item = of.substring(colon + 1) + "=" + typed.replace(',', '.').replace('−', '-').replace("°", "");
        readings.computeIfAbsent(head, one -> new EnumMap<>(Quantity.class)).putAll(QuantityList.OF_CLUBS.values("read on " + head, item));
        return null;
    }

    MatchService.Wish wish() {
        return new MatchService.Wish(keep, fields.isTicked("otherModels"), top, tolerances.all(), shop, minutes, readings, without);
    }

    /** What is asked, with an equals of its own. */
    Object question() {
        return List.of(club.<Object>map(tag -> tag).orElseGet(() -> target.orElseThrow().written()), wish());
    }

    /** What the twin is wanted of: the club on record; empty for a target. */
    Optional<Favourite> favourite(Workshop workshop) throws BadInput {
        return club.isEmpty() ? Optional.empty() : Optional.of(MatchService.favourite(workshop, club.get(), tolerances.all()));
    }

    MatchAnswer answer(Workshop workshop) throws BadInput {
        return club.isPresent() ? MatchService.twinOf(workshop, club.get(), wish())
            : MatchService.nearest(workshop, target.orElseThrow().written(), wish());
    }

    /**
     * What is still needed before anything can be ranked.
     * @return in words, each; none where all of it is there
     */
    public List<String> missing() {
        return target.map(TargetForm::missing).orElse(List.of());
    }

    /** All of it, for addresses. */
    Asked asked() {
        Asked asked = Asked.of(fields.form(), ASKED);
        if (target.isPresent()) {
            asked.with(Asked.of(fields.form(), TargetForm.NAMES));
        }
        return asked.with(Asked.of(fields.form(), ShopFields.NAMES)).with("without", withoutText()).with(tolerances.typed()).with(readFields);
    }

    /**
     * Where it is asked.
     * @return the path of its page
     */
    public String path() {
        return club.map(tag -> "/clubs/" + FindPages.encoded(tag) + "/twin").orElse(WRITTEN);
    }

    /**
     * The same question with one more part left out.
     * @param part its tag
     * @return an address
     */
    public String leavingOut(String part) {
        return asked().with("leaveOut", part).at(path());
    }

    /** Whether a part was left out just now, by its button. */
    boolean isLeavingOut() {
        return fields.form().text("leaveOut").isPresent();
    }

    /** The club; empty for a target written out. */
    Optional<String> club() {
        return club;
    }

    /**
     * For whom a build without a club is made, where a job of it asks.
     * @return the name as far as it is known; null where the club says it
     */
    public String forWhom() {
        return club.isPresent() ? null : fields.text("player");
    }

    /** The job that is planned, where one was taken on before. */
    Optional<String> job() {
        return fields.form().text("job");
    }

    /**
     * What was typed, and what is wrong with it.
     * @return the fields
     */
    public Fields fields() {
        return fields;
    }

    /**
     * Whether a tolerance, a weight or what stands with them cannot be read.
     * @return true where a message stands beside one
     */
    public boolean isToleranceWrong() {
        return fields.isWrong(ToleranceFields.NAMES) || fields.isWrong(ShopFields.NAMES);
    }

    /**
     * What was typed as read on heads, to be typed again where it cannot be read.
     * @return by field
     */
    public Map<String, String> readAgain() {
        return fields.wrong(READINGS).isEmpty() ? Map.of() : readFields;
    }

    /**
     * The tolerances and weights.
     * @return as typed
     */
    public ToleranceFields tolerances() {
        return tolerances;
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
        return new HowAddress(path(), query());
    }

    /**
     * What was asked, for an address.
     * @return a query; empty for nothing
     */
    public String query() {
        return asked().query();
    }

    /**
     * What is left out.
     * @return tags with commas between them
     */
    public String withoutText() {
        return String.join(", ", without);
    }

    /**
     * How many are shown, as it was typed.
     * @return a number, or what was typed in its place
     */
    public String shown() {
        return fields.text("top").isEmpty() ? Integer.toString(top) : fields.text("top");
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
