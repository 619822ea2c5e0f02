package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.MatchService;
import benchtwin.bench.QuantityList;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A target as it is written on its page: what the head is, what is kept, and the numbers wanted. */
final class TargetForm {

    private static final String WANTED = "want-";
    /** The names of its fields. */
    static final List<String> NAMES = Stream.concat(Stream.of("category", "number", "hand", "reading", "shaft", "head", "grip", "player"),
        Quantity.targetable().stream().map(TargetForm::field)).toList();

    private final MatchService.WrittenTarget written;
    private final List<String> missing = new ArrayList<>();

    private TargetForm(Fields fields, Keep keep) {
        Category category = fields.at("category", Category.DRIVER, form -> form.choice("category", "category", Category.values())
            .orElse(Category.DRIVER));
        Hand hand = fields.at("hand", Hand.RIGHT, form -> form.choice("hand", "hand", Hand.values()).orElse(Hand.RIGHT));
        AngleReading reading = fields.at("reading", category.usualReading(), form -> form.choice("reading", "how its angles are read",
            AngleReading.values()).orElse(category.usualReading()));
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.targetable()) {
            values.putAll(fields.at(field(quantity), Map.<Quantity, Double>of(), form -> value(form, quantity)));
        }
        written = new MatchService.WrittenTarget(category, fields.form().text("number"), hand, reading, values, fields.form().text("shaft"),
            fields.form().text("head"), fields.form().text("grip"));
        missing(fields, keep);
    }

    static TargetForm of(Fields fields, Keep keep) {
        return new TargetForm(fields, keep);
    }

    private void missing(Fields fields, Keep keep) {
        if (written.values().isEmpty()) {
            missing.add("a number that is wanted, such as loft, lie or frequency");
        }
        if (isFrequencyOfAnything(keep) && !written.values().containsKey(Quantity.LENGTH)) {
            missing.add("the length its frequency is wanted at");
        }
        if (written.grip().isEmpty() && written.shaft().isEmpty()) {
            missing.add("the grip it is built with");
        }
        if (keep == Keep.SHAFT && written.shaft().isEmpty()) {
            missing.add("the tag of the shaft that is there already");
        }
        if (keep == Keep.HEAD && written.head().isEmpty()) {
            missing.add("the tag of the head that is there already");
        }
    }

    private static Map<Quantity, Double> value(Form form, Quantity quantity) throws BadInput {
        Optional<String> typed = form.text(field(quantity));
        return typed.isEmpty() ? Map.of() : QuantityList.OF_CLUBS.values("wanted", quantity.word() + "="
            + typed.get().replace(',', '.').replace('−', '-').replace("°", ""));
    }

    /** Whether a frequency is wanted of parts that are all free: without a length any of them has it at some cut. */
    boolean isFrequencyOfAnything(Keep keep) {
        return keep == Keep.NONE && written.values().containsKey(Quantity.FREQUENCY);
    }

    /** The field a wanted number is typed into. */
    static String field(Quantity quantity) {
        return WANTED + quantity.word();
    }

    MatchService.WrittenTarget written() {
        return written;
    }

    /** What is still needed before it can be ranked. */
    List<String> missing() {
        return missing;
    }
}
