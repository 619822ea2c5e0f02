package benchtwin.stock;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/** What messages call each file: its bare name, or its path where two share a name. */
final class FileLabels {

    private final Map<String, Integer> uses = new HashMap<>();

    FileLabels(Collection<Path> paths) {
        paths.stream().distinct().forEach(path -> uses.merge(bareName(path), 1, Integer::sum));
    }

    String of(Path path) {
        return uses.getOrDefault(bareName(path), 1) > 1 ? path.toString() : bareName(path);
    }

    static String bareName(Path path) {
        Path name = path.getFileName();
        return name == null || name.toString().isEmpty() ? path.toString() : name.toString();
    }
}
