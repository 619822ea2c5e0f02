package benchtwin.web;

import benchtwin.bench.BadInput;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Files that came with a form, laid into a folder of their own while they are looked at. */
final class Uploads {

    private static final int MOST_FILES = 10;
    private static final int LONGEST_NAME = 80;
    private static final List<String> ENDINGS = List.of(".csv", ".txt");

    private Uploads() {
    }

    /**
     * Lays them down.
     * @return at least one, no two of one name
     * @throws BadInput when there is none, there are too many, or one is no table by its name
     */
    static List<Path> lay(List<UploadedFile> brought) throws BadInput {
        List<UploadedFile> files = brought.stream().filter(file -> !file.filename().isBlank()).toList();
        if (files.isEmpty()) {
            throw new BadInput("no file was chosen; expected CSV files, such as heads.csv");
        }
        if (files.size() > MOST_FILES) {
            throw new BadInput("%d files at once; expected at most %d".formatted(files.size(), MOST_FILES));
        }
        List<String> names = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (UploadedFile file : files) {
            String name = name(file.filename());
            if (ENDINGS.stream().noneMatch(name.toLowerCase(Locale.ROOT)::endsWith)) {
                wrong.add("%s is no CSV file; expected a name ending in .csv or .txt".formatted(name));
            } else if (names.contains(name)) {
                wrong.add("%s was chosen twice; expected every file once".formatted(name));
            }
            names.add(name);
        }
        if (!wrong.isEmpty()) {
            throw new BadInput(wrong);
        }
        List<Path> laid = new ArrayList<>();
        try {
            Path folder = Files.createTempDirectory("benchtwin-upload");
            folder.toFile().deleteOnExit();
            for (int i = 0; i < files.size(); i++) {
                Path path = folder.resolve(names.get(i));
                path.toFile().deleteOnExit();
                try (InputStream in = files.get(i).content()) {
                    Files.copy(in, path, StandardCopyOption.REPLACE_EXISTING);
                }
                laid.add(path);
            }
        } catch (IOException cannot) {
            remove(laid);
            throw new BadInput("the files could not be taken in: " + cannot.getMessage());
        }
        return laid;
    }

    /** The bare name, without anything that means something to a file system. */
    static String name(String brought) {
        String bare = brought.substring(Math.max(brought.lastIndexOf('/'), brought.lastIndexOf('\\')) + 1);
        String plain = bare.replaceAll("[\\p{Cntrl}:*?\"<>|]", "_").strip();
        return plain.length() > LONGEST_NAME ? plain.substring(plain.length() - LONGEST_NAME) : plain;
    }

    /** Takes them away again, and their folder. */
    static void remove(List<Path> files) {
        try {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
            if (!files.isEmpty()) {
                Files.deleteIfExists(files.get(0).getParent());
            }
        } catch (IOException left) {
            return;   // the system clears its folder of temporary files
        }
    }
}
