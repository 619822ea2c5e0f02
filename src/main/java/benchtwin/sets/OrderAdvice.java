package benchtwin.sets;

import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which few parts, with what readings, would improve a plan most. A club left out names the head or shaft it lacks; a part
 * that several clubs want has a price, and another like it would take about so much off the plan. The price of a part that a
 * club left out could use says how much that club is wanted, so it is left to the first kind of line.
 */
final class OrderAdvice {

    private static final int MOST = 6;
    /** Prices below this are not worth a letter, squared tolerances. */
    private static final double LEAST_GAIN = 0.05;

    private final SetTables tables;
    private final SetModel model;
    private final Option[] plan;
    private final Prices prices;

    OrderAdvice(SetTables tables, SetModel model, Option[] plan, Prices prices) {
        this.tables = tables;
        this.model = model;
        this.plan = plan;
        this.prices = prices;
    }

    /** The advice, most useful first. */
    List<OrderLine> lines() {
        List<OrderLine> lines = new ArrayList<>(forTheUnbuilt());
        List<OrderLine> contested = new ArrayList<>();
        Set<Integer> missingHeads = new HashSet<>();
        Set<Integer> missingShafts = new HashSet<>();
        for (WantedSlot slot : tables.slots()) {
            if (plan[slot.index()] == null) {
                model.options(slot.index()).forEach(option -> {
                    missingHeads.add(option.head());
                    missingShafts.add(option.shaft());
                });
            }
        }
        for (WantedSlot slot : tables.slots()) {
            Option option = plan[slot.index()];
            if (option != null) {
                double head = missingHeads.contains(option.head()) ? 0 : prices.head()[option.head()] / SetTables.MILLION;
                double shaft = missingShafts.contains(option.shaft()) ? 0
                    : prices.shaft()[option.shaft()] / SetTables.MILLION;
                if (head >= LEAST_GAIN) {
                    contested.add(new OrderLine("another head like " + words(tables.head(option.head())), wanting(option, true), head));
                }
                if (shaft >= LEAST_GAIN) {
                    contested.add(new OrderLine("another shaft like " + words(tables.shaft(option.shaft())),
                        wanting(option, false), shaft));
                }
            }
        }
        contested.sort(Comparator.comparingDouble(OrderLine::gain).reversed().thenComparing(OrderLine::part));
        contested.stream().limit(MOST).forEach(lines::add);
        return lines;
    }

    /** The clubs whose options name the part, in the order they are wanted, the one that has it last. */
    private String wanting(Option of, boolean head) {
        List<String> clubs = tables.slots().stream().filter(slot -> slot.index() != of.slot())
            .filter(slot -> model.options(slot.index()).stream()
                .anyMatch(option -> head ? option.head() == of.head() : option.shaft() == of.shaft()))
            .map(slot -> name(slot.club())).toList();
        String holder = name(tables.slots().get(of.slot()).club());
        return clubs.isEmpty() ? holder : "%s and %s that would take it too".formatted(holder,
            clubs.size() == 1 ? clubs.get(0) : clubs.size() + " clubs");
    }

    private static String name(WantedClub club) {
        return "%s's %s".formatted(club.player(), club.club());
    }

    private List<OrderLine> forTheUnbuilt() {
        Set<Integer> taken = new HashSet<>();
        for (Option option : plan) {
            if (option != null) {
                taken.add(option.head());
            }
        }
        Map<String, List<String>> wished = new LinkedHashMap<>();
        List<WantedSlot> urgentFirst = tables.slots().stream()
            .sorted(Comparator.comparingInt((WantedSlot slot) -> slot.club().priority())).toList();
        for (WantedSlot slot : urgentFirst) {
            if (plan[slot.index()] == null) {
                boolean headLeft = slot.plans().heads().stream().anyMatch(head -> !taken.contains(tables.index(head)));
                wished.computeIfAbsent(headLeft ? shaftFor(slot) : headFor(slot), key -> new ArrayList<>()).add(name(slot.club()));
            }
        }
        return wished.entrySet().stream().map(entry -> new OrderLine(entry.getKey(), String.join(", ", entry.getValue()),
            Double.POSITIVE_INFINITY)).toList();
    }

    private String headFor(WantedSlot slot) {
        WantedClub club = slot.club();
        List<String> parts = new ArrayList<>();
        angle(slot.target(), Quantity.LOFT, "loft", parts);
        angle(slot.target(), Quantity.LIE, "lie", parts);
        angle(slot.target(), Quantity.FACE, "face", parts);
        angle(slot.target(), Quantity.BOUNCE, "bounce", parts);
        OptionalDouble mass = tables.inventory().heads().stream()
            .filter(head -> head.category() == club.category() && head.number().equals(club.number()))
            .flatMap(head -> head.massG().stream()).mapToDouble(Reading::value).average();
        mass.ifPresent(grams -> parts.add("about %.0f g as its like in stock".formatted(grams)));
        String models = groupModels(slot, true);
        return "a %s-handed %s%s head%s: %s".formatted(club.hand().word(), club.number().map(n -> n + " ").orElse(""),
            club.category().word(), models, String.join(", ", parts));
    }

    private String shaftFor(WantedSlot slot) {
        WantedClub club = slot.club();
        List<String> parts = new ArrayList<>();
        slot.target().of(Quantity.LENGTH).ifPresent(length -> parts.add("long enough for %.2f in"
            .formatted(length.value() / Units.MM_PER_INCH)));
        slot.target().of(Quantity.FREQUENCY).ifPresent(cpm -> parts.add("that reads %.0f cpm built".formatted(cpm.value())));
        return "a shaft for a %s%s%s: %s".formatted(club.number().map(n -> n + " ").orElse(""), club.category().word(),
            groupModels(slot, false), String.join(", ", parts));
    }

    /** The model the built clubs of a sharing group have. */
    private String groupModels(WantedSlot slot, boolean head) {
        SlotGroup group = model.groups().get(model.groupOf(slot.index()));
        if (!group.sameModels()) {
            return "";
        }
        Set<String> models = group.slots().stream().map(s -> plan[s]).filter(Objects::nonNull)
            .map(option -> head ? tables.head(option.head()).model() : tables.shaft(option.shaft()).model())
            .collect(Collectors.toSet());
        return models.size() == 1 ? " (%s, as the group)".formatted(models.iterator().next()) : "";
    }

    private static void angle(Target target, Quantity quantity, String word, List<String> parts) {
        target.of(quantity).map(Wanted::value).ifPresent(degrees -> parts.add("%s %.1f°".formatted(word, degrees)));
    }

    private static String words(Head head) {
        List<String> readings = new ArrayList<>();
        head.angles().loftDeg().ifPresent(r -> readings.add("loft %.1f°".formatted(r.value())));
        head.angles().lieDeg().ifPresent(r -> readings.add("lie %.1f°".formatted(r.value())));
        head.massG().ifPresent(r -> readings.add("%.0f g".formatted(r.value())));
        return "%s (%s %s%s, %s)".formatted(head.tag(), head.model(), head.number().map(n -> n + " ").orElse(""),
            head.category().word(), String.join(", ", readings));
    }

    private static String words(Shaft shaft) {
        List<String> readings = new ArrayList<>();
        shaft.massG().ifPresent(r -> readings.add("%.0f g".formatted(r.value())));
        readings.add("%.2f in".formatted(shaft.lengthMm() / Units.MM_PER_INCH));
        shaft.frequencies().stream().findFirst().ifPresent(f -> readings.add("%.0f cpm".formatted(f.cpm().value())));
        return "%s (%s, %s)".formatted(shaft.tag(), shaft.model(), String.join(", ", readings));
    }
}
