package benchtwin.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a file is that is no text, told by how it begins, whatever it is called. Published: the formats' own definitions (APPNOTE.TXT for
 * zip, RFC 1952 for gzip, ISO 32000 for PDF, ISO 15948 for PNG, ITU-T T.81 for JPEG, GIF89a; [MS-CFB] for compound files).
 */
enum FileNature {
    /** Spreadsheets of today are zip archives. */
    ARCHIVE("is a workbook or archive, not text", 'P', 'K', 3, 4),
    EMPTY_ARCHIVE("is an empty archive, not text", 'P', 'K', 5, 6),
    OLD_WORKBOOK("is a workbook or document of an older kind, not text", 0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1),
    GZIP("is a compressed file (gzip), not text", 0x1F, 0x8B),
    PDF("is a PDF, not a table", '%', 'P', 'D', 'F', '-'),
    PNG("is a picture (PNG), not a table", 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'),
    JPEG("is a picture (JPEG), not a table", 0xFF, 0xD8, 0xFF),
    GIF("is a picture (GIF), not a table", 'G', 'I', 'F', '8'),
    UTF_32("is saved as UTF-32", 0xFF, 0xFE, 0, 0),
    UTF_16_LITTLE("is saved as UTF-16", 0xFF, 0xFE),
    UTF_16_BIG("is saved as UTF-16", 0xFE, 0xFF);

    /** So many characters tell UTF-16 that does not say so: half the bytes of a table's header are then zero. */
    private static final int LOOKED_AT = 64;

    private final String problem;
    private final int[] start;

    FileNature(String problem, int... start) {
        this.problem = problem;
        this.start = start;
    }

    /**
     * What is wrong with it as text.
     * @param bytes all of the file
     * @return in words after its name; empty where it may be text
     */
    static Optional<String> problem(byte[] bytes) {
        Optional<String> known = Arrays.stream(values()).filter(nature -> nature.begins(bytes)).map(nature -> nature.problem).findFirst();
        return known.isPresent() || !isWide(bytes) ? known : Optional.of(UTF_16_BIG.problem);
    }

    private boolean begins(byte[] bytes) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    /** Two bytes to a letter without a mark at the beginning: every other byte is zero, the ones between are not. */
    private static boolean isWide(byte[] bytes) {
        int pairs = Math.min(LOOKED_AT, bytes.length / 2);
        return pairs > 1 && List.of(0, 1).stream().anyMatch(zero -> {
            for (int pair = 0; pair < pairs; pair++) {
                if (bytes[2 * pair + zero] != 0 || bytes[2 * pair + 1 - zero] == 0) {
                    return false;
                }
            }
            return true;
        });
    }
}
