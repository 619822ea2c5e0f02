package benchtwin.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The files of the sample workshop, which the program carries with it. */
public final class SampleFiles {

    /** Their names. */
    static final List<String> NAMES = List.of("clubs.csv", "frequencies.csv", "grips.csv", "heads.csv", "lines.csv", "resins.csv",
        "set-targets.csv", "shafts.csv", "sleeve-settings.csv", "sleeves.csv", "weights.csv");
    private static final String PLACE = "/benchtwin/samples/";

    private SampleFiles() {
    }

    /**
     * Lays them into a folder.
     * @param folder an empty folder, or one that is to be made
     * @throws BadInput when something lies there already, or it cannot be written
     */
    public static void into(Path folder) throws BadInput {
        try {
            Files.createDirectories(folder);
            for (String name : NAMES) {
                try (InputStream file = SampleFiles.class.getResourceAsStream(PLACE + name)) {
                    Files.copy(file, folder.resolve(name));
                }
            }
        } catch (IOException cannot) {
            throw new BadInput("%s: the sample workshop cannot be laid there (%s); name a new folder that can be written".formatted(folder,
                cannot instanceof FileAlreadyExistsException ? "something of that name is there already" : cannot.getMessage()));
        }
    }
}
