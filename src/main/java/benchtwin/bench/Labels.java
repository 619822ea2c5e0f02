package benchtwin.bench;

import benchtwin.bench.LabelWords.Labelled;
import benchtwin.book.EventKind;
import benchtwin.book.NewEvent;
import benchtwin.book.ThingKind;
import benchtwin.ticket.Label;
import benchtwin.ticket.LabelPage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Prints labels for what is in the stock and for players' clubs. */
public final class Labels {

    /** Of a part or club in the book: the day its label was printed. */
    private static final String PRINTED = "label_printed";
    private static final int MOST_LABELS = 5000;

    /**
     * Which labels are asked for.
     * @param tags   these, in this order; all that the rest leaves when empty
     * @param kinds  head, shaft, grip, sleeve, weight or club; all when empty
     * @param place  words of the place where they lie
     * @param onlyNew only those that were not put down as printed; with a book
     * @param copies how many of each, 1 or more
     */
    public record Asked(List<String> tags, List<String> kinds, Optional<String> place, boolean onlyNew, int copies) {
    }

    /**
     * Labels to print.
     * @param labels what stands on them, copies included
     * @param tags   whose they are, with their kind before a colon
     */
    public record Chosen(List<Label> labels, List<String> tags) {
    }

    private Labels() {
    }

    /**
     * Chooses labels.
     * @param workshop the stock
     * @param book     where it comes from a book: which labels were printed
     * @param asked    which
     * @param day      the day they are printed
     * @return the labels; none when nothing is as asked
     * @throws BadInput when a tag or a kind is not known
     */
    public static Chosen choose(Workshop workshop, Optional<OpenBook> book, Asked asked, LocalDate day) throws BadInput {
        List<String> kinds = new ArrayList<>();
        for (String kind : asked.kinds()) {
            kinds.add(kind(kind));
        }
        List<Labelled> all = new LabelWords(day).all(workshop.inventory()).stream()
            .filter(one -> kinds.isEmpty() || kinds.contains(one.kind()))
            .filter(one -> asked.place().stream().allMatch(words -> lower(one.place()).contains(lower(words)))).toList();
        List<Labelled> chosen = new ArrayList<>();
        if (asked.tags().isEmpty()) {
            chosen.addAll(all);
        }
        Map<String, Set<Labelled>> named = asked.tags().isEmpty() ? Map.of() : named(all);
        for (String tag : asked.tags()) {
            chosen.add(find(all, named, tag));
        }
        if (asked.onlyNew()) {
            Set<String> printed = printed(book.orElseThrow(() -> new BadInput(
                "--new goes with the book, which knows what was printed: leave out --stock and the files")));
            chosen.removeIf(one -> printed.contains(key(one)));
        }
        return new Chosen(chosen.stream().flatMap(one -> Collections.nCopies(asked.copies(), one.label()).stream()).toList(),
            chosen.stream().map(Labels::key).toList());
    }

    private static String kind(String word) throws BadInput {
        String asked = lower(word);
        return LabelWords.KINDS.stream().filter(kind -> asked.equals(kind) || asked.equals(kind + "s")).findFirst()
            .orElseThrow(() -> new BadInput("\"%s\" is nothing that has a label; expected one of %s".formatted(word,
                String.join(", ", LabelWords.KINDS))));
    }

    /** Everything by its tag, and by its tag with its kind before it: somebody may tick hundreds out of thousands. */
    private static Map<String, Set<Labelled>> named(List<Labelled> all) {
        Map<String, Set<Labelled>> named = new HashMap<>();
        for (Labelled one : all) {
            for (String name : List.of(lower(one.label().tag()), lower(key(one)))) {
                named.computeIfAbsent(name, any -> new LinkedHashSet<>()).add(one);
            }
        }
        return named;
    }

    private static Labelled find(List<Labelled> all, Map<String, Set<Labelled>> named, String tag) throws BadInput {
        List<Labelled> found = List.copyOf(named.getOrDefault(lower(tag), Set.of()));
        if (found.size() > 1) {
            throw new BadInput("%s is the tag of several: say which, %s".formatted(tag,
                found.stream().map(Labels::key).collect(Collectors.joining(" or "))));
        }
        if (found.isEmpty()) {
            List<String> tags = all.stream().map(one -> one.label().tag()).toList();
            throw new BadInput(tags.isEmpty() ? "nothing is as asked, so there is no %s".formatted(tag)
                : "nothing here is tagged %s; nearest are %s".formatted(tag, NearNames.of(tag, tags)));
        }
        return found.get(0);
    }

    private static String key(Labelled one) {
        return one.kind() + ":" + one.label().tag();
    }

    private static String lower(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static List<ThingKind> thingKinds() {
        return Arrays.stream(ThingKind.values()).filter(kind -> LabelWords.KINDS.contains(kind.word())).toList();
    }

    private static Set<String> printed(OpenBook book) throws BadInput {
        return book.read(view -> {
            Set<String> printed = new HashSet<>();
            for (ThingKind kind : thingKinds()) {
                view.eachState(kind, text -> {
                    if (text.facts().containsKey(PRINTED)) {
                        printed.add(kind.word() + ":" + text.thing().tag());
                    }
                });
            }
            return printed;
        });
    }

    /**
     * Puts down that labels were printed, so that they are new no more.
     * @param book   the book
     * @param chosen which
     * @param day    when
     * @throws BadInput when the book cannot be written
     */
    public static void mark(OpenBook book, Chosen chosen, LocalDate day) throws BadInput {
        book.write("label", entry -> {
            for (String tag : chosen.tags()) {
                String[] named = tag.split(":", 2);
                ThingKind kind = thingKinds().stream().filter(one -> one.word().equals(named[0])).findFirst().orElseThrow();
                entry.add(OpenBook.need(entry, kind, named[1]), NewEvent.of(EventKind.DESCRIBED)
                    .with(Map.of(PRINTED, day.toString())));
            }
            return chosen.tags().size();
        });
    }

    /**
     * Says whether a file can be printed to.
     * @param file a path ending in .pdf
     * @throws BadInput when it ends otherwise, or its folder is not there
     */
    public static void check(Path file) throws BadInput {
        WrittenFile.check(file, List.of(".pdf"), "file");
    }

    /**
     * Prints labels into a file, over one that is there already.
     * @param chosen at least one
     * @param print  how
     * @param day    when
     * @param file   a path that {@link #check} let through
     * @return what was printed
     * @throws BadInput when the file cannot be written
     */
    public static LabelPage.File print(Chosen chosen, LabelPage.Print print, LocalDate day, Path file) throws BadInput {
        LabelPage.File printed = pdf(chosen, print, day);
        WrittenFile.write(file, printed.bytes());
        return printed;
    }

    /**
     * Prints labels.
     * @param chosen at least one
     * @param print  how
     * @param day    when
     * @return what was printed
     * @throws BadInput when there are more than anybody would print at once
     */
    public static LabelPage.File pdf(Chosen chosen, LabelPage.Print print, LocalDate day) throws BadInput {
        if (chosen.labels().size() > MOST_LABELS) {
            throw new BadInput("%d labels at once: expected at most %d; choose by kind and place".formatted(chosen.labels().size(),
                MOST_LABELS));
        }
        return LabelPage.pdf(chosen.labels(), print, day.atStartOfDay());
    }
}
