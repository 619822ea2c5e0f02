package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.club.Word;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was typed into a page. An empty field is one that was not filled in. */
final class Form {

    private final Context ctx;
    private final boolean posted;

    private Form(Context ctx, boolean posted) {
        this.ctx = ctx;
        this.posted = posted;
    }

    /** Of a page's address. */
    static Form query(Context ctx) {
        return new Form(ctx, false);
    }

    /** Of a form that was sent. */
    static Form posted(Context ctx) {
        return new Form(ctx, true);
    }

    /** A field, without blanks around it. */
    Optional<String> text(String name) {
        String typed = posted ? ctx.formParam(name) : ctx.queryParam(name);
        return Optional.ofNullable(typed).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** A field that has to be filled in. */
    String need(String name, String called) throws BadInput {
        return text(name).orElseThrow(() -> new BadInput("%s is missing".formatted(called)));
    }

    /** A box that can be ticked. */
    boolean isTicked(String name) {
        return text(name).isPresent();
    }

    /** A number that a page wrote itself. */
    long count(String name) throws BadInput {
        Optional<String> typed = text(name);
        if (typed.isEmpty() || !typed.get().matches("\\d{1,18}")) {
            throw new BadInput("this form lacks what its page wrote into it: load the page again");
        }
        return Long.parseLong(typed.get());
    }

    /** A day. */
    Optional<LocalDate> day(String name, String called) throws BadInput {
        Optional<String> typed = text(name);
        try {
            return typed.map(LocalDate::parse);
        } catch (DateTimeParseException notADay) {
            throw new BadInput("%s: \"%s\" is not a day; expected year-month-day, such as 2026-05-03".formatted(called, typed.get()));
        }
    }

    /** Every field as it was typed, to show it again. */
    Map<String, String> typed() {
        Map<String, String> typed = new HashMap<>();
        (posted ? ctx.formParamMap() : ctx.queryParamMap()).forEach((name, values) -> typed.put(name, values.isEmpty() ? "" : values.get(0)));
        return typed;
    }

    /** Every value of a field that may come several times. */
    List<String> all(String name) {
        List<String> typed = posted ? ctx.formParams(name) : ctx.queryParams(name);
        return typed.stream().map(String::strip).filter(text -> !text.isEmpty()).toList();
    }

    /** A number, with a point or a comma. */
    Optional<Double> number(String name, String called) throws BadInput {
        Optional<String> typed = text(name);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        try {
            double value = Double.parseDouble(typed.get().replace(',', '.').replace('−', '-').replace("°", ""));
            if (Double.isFinite(value) && !typed.get().matches(".*[a-zA-Z].*")) {
                return Optional.of(value);
            }
        } catch (NumberFormatException notANumber) {
            // said below
        }
        throw new BadInput("%s: \"%s\" is not a number".formatted(called, typed.get()));
    }

    /** One of some words. */
    <E extends Enum<E> & Word> Optional<E> choice(String name, String called, E[] choices) throws BadInput {
        Optional<String> typed = text(name);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Arrays.stream(choices).filter(one -> one.word().equals(typed.get().toLowerCase(Locale.ROOT))).findFirst()
            .orElseThrow(() -> new BadInput("%s: \"%s\"; expected one of %s".formatted(called, typed.get(),
                Arrays.stream(choices).map(Word::word).collect(Collectors.joining(", "))))));
    }
}
