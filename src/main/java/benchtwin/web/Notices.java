package benchtwin.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

/** What is to be said on the page that follows a post: kept until that page is asked for, the last hundred at most. */
final class Notices {

    private static final int MOST = 100;

    private final AtomicLong last = new AtomicLong();
    private final Map<String, List<String>> kept = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, List<String>> eldest) {
            return size() > MOST;
        }
    };

    /** Keeps lines and gives the number they are asked for by. */
    synchronized String keep(List<String> lines) {
        String number = Long.toString(last.incrementAndGet());
        kept.put(number, List.copyOf(lines));
        return number;
    }

    /** The lines, once; none when there are none by that number. */
    synchronized List<String> take(String number) {
        List<String> lines = kept.remove(number);
        return lines == null ? List.of() : lines;
    }
}
