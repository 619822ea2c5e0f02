package benchtwin.bench;

import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Inventory;
import benchtwin.club.Keeping;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Weight;
import benchtwin.club.Word;
import benchtwin.measure.LengthText;
import benchtwin.measure.PlainNumber;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import benchtwin.ticket.Label;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What labels say: what a thing is, what it measures on the day it is printed, and where it lies. */
final class LabelWords {

    /** What may be labelled, as {@code --kind} says it, in order. */
    static final List<String> KINDS = List.of("head", "shaft", "grip", "sleeve", "weight", "club");

    private static final String NO_MODEL = "";
    private static final char NO_BREAK = '\u00a0';

    private final LocalDate day;

    LabelWords(LocalDate day) {
        this.day = day;
    }

    /** A thing that can have a label. */
    record Labelled(String kind, String place, Label label) {
    }

    /** Everything there is, by kind, in the stock's own order. */
    List<Labelled> all(Inventory stock) {
        return Stream.of(stock.heads().stream().map(this::head), stock.shafts().stream().map(this::shaft),
            stock.grips().stream().map(this::grip), stock.sleeves().stream().map(this::sleeve),
            stock.weights().stream().map(this::weight), stock.clubs().stream().map(this::club)).flatMap(part -> part).toList();
    }

    private Labelled head(Head head) {
        HeadAngles angles = head.angles();
        Map<String, Optional<Reading>> read = new LinkedHashMap<>();
        read.put("loft", angles.loftDeg());
        read.put("lie", angles.lieDeg());
        read.put("face", head.isWood() ? angles.faceDeg() : Optional.empty());
        read.put("bounce", head.isWood() ? Optional.empty() : angles.bounceDeg());
        String measured = read.entrySet().stream().flatMap(one -> one.getValue().stream()
            .map(value -> one.getKey() + NO_BREAK + number(value.value(), "°"))).collect(Collectors.joining(", "));
        return of("head", head.tag(), head.keeping(), what(head.model(), head.category(), head.number(), head.hand()), dated(measured),
            join(head.massG().map(mass -> number(mass.value(), "\u00a0g")), head.seat().map(seat -> "takes sleeve " + seat.fit()),
                head.bore().map(bore -> "bore " + inches(bore.diameterMm()) + " " + bore.kind().word())));
    }

    private Labelled shaft(Shaft shaft) {
        String meantFor = shaft.meantFor().stream().sorted().map(Word::word).collect(Collectors.joining(", "));
        return of("shaft", shaft.tag(), shaft.keeping(), shaft.model(), shaft.material().word()
            + (meantFor.isEmpty() ? "" : ", for " + meantFor), join(shaft.massG().map(mass -> number(mass.value(), "\u00a0g")),
                Optional.of(length(shaft.lengthMm())),
                Optional.of("tip " + inches(shaft.tipMm()) + " " + shaft.tipKind().word())),
            dated(shaft.frequencies().stream().findFirst().map(read -> number(read.cpm().value(), "\u00a0cpm")).orElse("")));
    }

    private Labelled grip(Grip grip) {
        return of("grip", grip.tag(), grip.keeping(), grip.model(), join(grip.massG().map(mass -> number(mass.value(), "\u00a0g")),
            grip.ribbed() ? Optional.of("ribbed") : Optional.of("round")));
    }

    private Labelled sleeve(Sleeve sleeve) {
        return of("sleeve", sleeve.name(), sleeve.keeping(), "sleeve, fits " + sleeve.fits().stream().sorted()
            .collect(Collectors.joining(", ")), join(Optional.of("bore " + inches(sleeve.boreMm())),
                sleeve.hand().map(hand -> hand.word() + "-handed")));
    }

    private Labelled weight(Weight weight) {
        return of("weight", weight.tag(), weight.keeping(), number(weight.massG(), "\u00a0g"),
            weight.port().equals(Weight.TIP) ? "for the tip" : "port " + weight.port());
    }

    private Labelled club(RecordedClub club) {
        return of("club", club.tag(), Keeping.UNRECORDED, club.player(), what(NO_MODEL, club.category(), club.number(), club.hand()),
            join(club.newest().lengthMm().map(length -> length(length.value()))));
    }

    private static Labelled of(String kind, String tag, Keeping keeping, String... lines) {
        List<String> all = new ArrayList<>(List.of(lines));
        keeping.place().ifPresent(all::add);
        return new Labelled(kind, keeping.place().orElse(""), new Label(tag, all.stream().filter(line -> !line.isBlank()).toList()));
    }

    private static String what(String model, Word category, Optional<String> number, Hand hand) {
        return "%s %s%s, %s".formatted(model, category.word(), number.map(n -> " " + n).orElse(""), hand.word()).strip();
    }

    /** A label outlives a reading: it says when it was so. */
    private String dated(String measured) {
        return measured.isEmpty() ? "" : measured + " on" + NO_BREAK + day;
    }

    @SafeVarargs
    private static String join(Optional<String>... parts) {
        return Stream.of(parts).flatMap(Optional::stream).collect(Collectors.joining(", "));
    }

    private static String number(double value, String unit) {
        return PlainNumber.text(Math.round(value * 100) / 100.0).replace('-', '−') + unit;
    }

    private static String inches(double mm) {
        return String.format(Locale.ROOT, "%.3f\u00a0in", Units.inches(mm));
    }

    private static String length(double mm) {
        return (LengthText.inchesAndSixteenths(mm) + " in").replace(' ', NO_BREAK);
    }
}
