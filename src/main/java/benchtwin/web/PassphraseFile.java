package benchtwin.web;

import benchtwin.bench.BadInput;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/**
 * Where what is kept of the passphrase lies: a file beside the book that only its owner may read, so that the workshop's tablets
 * need no new passphrase every morning. It is no part of the book, and no copy of the book has it.
 */
public final class PassphraseFile {

    private static final String ENDING = ".passphrase";

    private final Path file;

    private PassphraseFile(Path file) {
        this.file = file;
    }

    /**
     * Of a book.
     * @param book the book's file
     * @return its passphrase's, there or not
     */
    public static PassphraseFile beside(Path book) {
        return new PassphraseFile(book.resolveSibling(book.getFileName() + ENDING));
    }

    /**
     * Where it lies.
     * @return the file
     */
    public Path file() {
        return file;
    }

    /**
     * What was kept before.
     * @return empty when there is nothing yet
     * @throws BadInput when the file holds something else
     */
    public Optional<PassphraseHash> kept() throws BadInput {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(PassphraseHash.parse(Files.readString(file)));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new BadInput("%s does not hold what is kept of a passphrase: delete it, or give --new-passphrase".formatted(file));
        }
    }

    /**
     * Keeps another in place of what was there. A crash leaves the one or the other.
     * @param hash what is kept of the passphrase
     * @throws BadInput when the file cannot be written
     */
    public void keep(PassphraseHash hash) throws BadInput {
        try {
            Path fresh = Files.createTempFile(file.toAbsolutePath().getParent(), "passphrase", ENDING, ownerOnly());
            Files.writeString(fresh, hash.text() + System.lineSeparator());
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException cannot) {
            throw new BadInput("%s cannot be written: what is kept of the passphrase lies there".formatted(file));
        }
    }

    /** Where the system knows no such permissions, the user's own folder keeps others out. */
    private static FileAttribute<?>[] ownerOnly() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
            ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))}
            : new FileAttribute<?>[0];
    }
}
