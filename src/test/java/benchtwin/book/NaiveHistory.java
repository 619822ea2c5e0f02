package benchtwin.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What a workshop would do with a stack of dated slips: nothing is worked out before it is asked for, and every question goes
 * through all of them. It shares no code with the book.
 */
final class NaiveHistory {

    /**
     * One value on a slip.
     * @param slip     the slip it stands on
     * @param number   its number among all values, in the order in which they were written
     * @param corrects the number of the value it puts right
     * @param value    blank where it takes that one back
     */
    record Value(int slip, int number, String quantity, String condition, OptionalInt corrects, Optional<Double> value) {
    }

    /**
     * One slip.
     * @param entered  the day it was written
     * @param happened the day it tells of; the day it was written where it says none
     * @param isDay    whether only the day is known, which goes before what is known to the minute
     */
    record Slip(int number, String thing, LocalDate entered, LocalDate happened, boolean isDay, EventKind kind,
                Map<String, String> facts, List<Value> values) {
    }

    /**
     * What the slips say.
     * @param standing in the book's word
     * @param values   by quantity and condition
     */
    record Said(String standing, Map<String, String> facts, Map<String, List<Double>> values) {
    }

    private final List<Slip> slips = new ArrayList<>();

    void put(Slip slip) {
        slips.add(slip);
    }

    List<Slip> slips() {
        return slips;
    }

    /** What is said of a thing by the slips that were written by one day, of what had happened by another. */
    Optional<Said> asked(String thing, Optional<LocalDate> knownBy, Optional<LocalDate> trueBy) {
        List<Slip> known = new ArrayList<>();
        for (Slip slip : slips) {
            if (slip.thing().equals(thing) && (knownBy.isEmpty() || !slip.entered().isAfter(knownBy.get()))) {
                known.add(slip);
            }
        }
        List<Slip> told = new ArrayList<>();
        for (Slip slip : known) {
            if (slip.kind() != EventKind.CORRECTED && (trueBy.isEmpty() || !slip.happened().isAfter(trueBy.get()))) {
                told.add(slip);
            }
        }
        if (told.isEmpty()) {
            return Optional.empty();
        }
        told.sort((a, b) -> {
            int byDay = a.happened().compareTo(b.happened());
            int byHour = byDay != 0 ? byDay : Boolean.compare(b.isDay(), a.isDay());
            return byHour != 0 ? byHour : Integer.compare(a.number(), b.number());
        });
        String standing = "there";
        Map<String, String> facts = new TreeMap<>();
        Map<String, List<Double>> values = new HashMap<>();
        for (Slip slip : told) {
            if (slip.kind() == EventKind.RETIRED) {
                standing = "retired";
            } else if (slip.kind() == EventKind.RETURNED) {
                standing = "there";
            }
            for (Map.Entry<String, String> fact : slip.facts().entrySet()) {
                facts.put(fact.getKey(), fact.getValue());
            }
            Map<String, List<Double>> fresh = new HashMap<>();
            for (Value value : slip.values()) {
                Value last = corrected(value, known);
                if (last.value().isPresent()) {
                    fresh.computeIfAbsent(last.quantity() + " " + last.condition(), key -> new ArrayList<>())
                        .add(last.value().get());
                }
            }
            values.putAll(fresh);
        }
        facts.values().removeIf(String::isEmpty);
        values.values().forEach(list -> list.sort(null));
        return Optional.of(new Said(standing, facts, values));
    }

    private static Value corrected(Value value, List<Slip> known) {
        for (Slip slip : known) {
            for (Value other : slip.values()) {
                if (other.corrects().isPresent() && other.corrects().getAsInt() == value.number()) {
                    return corrected(other, known);
                }
            }
        }
        return value;
    }
}
