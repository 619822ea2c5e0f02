package benchtwin.stock;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Takes a file's text in, or says in one fault why it cannot be read as text. */
final class FileText {

    /** The largest file taken, bytes: 64 MiB, some 300,000 heads. A larger one is refused before it is read. */
    static final long LARGEST_BYTES = 64L * 1024 * 1024;
    /** The most separators any honest line holds; beyond it a line could eat all memory. */
    static final int MOST_SEPARATORS = 5000;
    private static final String CSV = "a text file saved as CSV (UTF-8)";
    private static final String SAVED_AS_CSV = CSV + ": open it in the program it was made with and save the table as CSV";
    private static final long BYTES_PER_MIB = 1024L * 1024;

    private FileText() {
    }

    /** The text without its byte-order mark; empty after adding one fault. */
    static Optional<String> load(Path path, String file, FaultList faults) {
        if (!Files.exists(path)) {
            return refuse(file, 0, "is not there", "a CSV file at " + path, faults);
        }
        if (Files.isDirectory(path)) {
            return refuse(file, 0, "is a folder", "a CSV file", faults);
        }
        if (!Files.isRegularFile(path)) {
            return refuse(file, 0, "is not a plain file", "a CSV file", faults);
        }
        try {
            if (Files.size(path) > LARGEST_BYTES) {
                return tooLarge(file, "%d MiB".formatted(Files.size(path) / BYTES_PER_MIB), faults);
            }
            byte[] bytes;
            try (InputStream in = Files.newInputStream(path)) {
                bytes = in.readNBytes((int) LARGEST_BYTES + 1);
            }
            return bytes.length > LARGEST_BYTES ? tooLarge(file, "more", faults) : decode(bytes, file, faults);
        } catch (IOException | SecurityException unreadable) {
            return refuse(file, 0, "cannot be read", "a file this user may open and a disk that answers", faults);
        }
    }

    private static Optional<String> tooLarge(String file, String size, FaultList faults) {
        return refuse(file, 0, "is too large (%s) and was not read".formatted(size),
            "at most %d MiB".formatted(LARGEST_BYTES / BYTES_PER_MIB), faults);
    }

    static Optional<String> decode(byte[] bytes, String file, FaultList faults) {
        Optional<String> other = FileNature.problem(bytes);
        if (other.isPresent()) {
            return refuse(file, 0, other.get(), SAVED_AS_CSV, faults);
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT).decode(in, out, true);
        int good = in.position();
        out.flip();
        String text = out.length() > 0 && out.charAt(0) == '\uFEFF' ? out.subSequence(1, out.length()).toString()
            : out.toString();
        Optional<String> plain = refuseOddCharacters(text, file, faults);
        if (plain.isPresent() && result.isError()) {
            return refuse(file, lines(text), "holds a byte that is not UTF-8 (hex %02X)".formatted(bytes[good] & 0xFF),
                CSV, faults);
        }
        return plain;
    }

    /** One pass over the text: control characters mean a binary file, endless separators mean no table. */
    private static Optional<String> refuseOddCharacters(String text, String file, FaultList faults) {
        int separators = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                separators = 0;
            } else if (c == ',' || c == ';' || c == '\t') {
                separators++;
            } else if (c < ' ') {
                return refuse(file, lines(text.substring(0, i)), c == 0 ? "holds a zero byte"
                    : "holds a control character (hex %02X)".formatted((int) c), CSV + ", not a binary file", faults);
            }
            if (separators > MOST_SEPARATORS) {
                return refuse(file, lines(text.substring(0, i)), "holds more than %d separators".formatted(MOST_SEPARATORS),
                    "one cell for each column", faults);
            }
        }
        return Optional.of(text);
    }

    /** The line the end of this text lies on, from 1. */
    private static long lines(String text) {
        long line = 1;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n' || text.charAt(i) == '\r' && !text.startsWith("\n", i + 1)) {
                line++;
            }
        }
        return line;
    }

    private static Optional<String> refuse(String file, long line, String problem, String expected, FaultList faults) {
        faults.add(new Fault(file, line, Optional.empty(), Optional.empty(), problem, expected));
        return Optional.empty();
    }
}
