package benchtwin.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a page was asked, as the query of its address: the fields that were filled in, in a fixed order, and nothing else. */
final class Asked {

    private final List<String> pairs = new ArrayList<>();

    private Asked() {
    }

    /** A field, left out when it is empty. */
    Asked with(String name, String value) {
        if (!value.isBlank()) {
            pairs.add(FindPages.encoded(name) + "=" + FindPages.encoded(value.strip()));
        }
        return this;
    }

    /** Several fields. */
    Asked with(Map<String, String> fields) {
        fields.forEach(this::with);
        return this;
    }

    /** All another one has. */
    Asked with(Asked more) {
        pairs.addAll(more.pairs);
        return this;
    }

    static Asked nothing() {
        return new Asked();
    }

    /** The fields of a form that were filled in. */
    static Asked of(Form form, List<String> names) {
        Asked asked = new Asked();
        names.forEach(name -> asked.with(name, form.text(name).orElse("")));
        return asked;
    }

    /** For an address. */
    String query() {
        return String.join("&", pairs);
    }

    /** An address with this as its query. */
    String at(String path) {
        return pairs.isEmpty() ? path : path + "?" + query();
    }
}
