package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookTable;
import benchtwin.stock.PlainTable;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes a whole book out into open files, and makes a book of them again that says the same: one CSV file a table in a folder,
 * or one JSON file. What is derived is not in them; it is worked out again.
 */
public final class BookTransfer {

    private static final String JSON = ".json";
    private static final String CSV = ".csv";
    private static final String FORMAT = "benchtwin book";

    private BookTransfer() {
    }

    /**
     * Writes everything the book holds.
     * @param book   the book
     * @param target a file ending in .json, or a folder that is made for the CSV files
     * @return the files written
     * @throws BadInput when one of them is there already, or cannot be written
     */
    public static List<Path> write(OpenBook book, Path target) throws BadInput {
        List<BookTable> tables = book.read(BookTable::all);
        boolean json = target.toString().endsWith(JSON);
        List<Path> files = json ? List.of(target) : BookTable.NAMES.stream().map(name -> target.resolve(name + CSV)).toList();
        for (Path file : files) {
            if (Files.exists(file)) {
                throw new BadInput("%s is there already; name a file or folder that is not".formatted(file));
            }
        }
        try {
            if (json) {
                whole(target, writer -> json(writer, tables));
            } else {
                Files.createDirectories(target);
                for (BookTable table : tables) {
                    whole(target.resolve(table.name() + CSV),
                        writer -> writer.write(new PlainTable(table.columns(), table.rows()).text()));
                }
            }
            return files;
        } catch (IOException refused) {
            throw new BadInput("the book cannot be written to %s: %s".formatted(target, refused.getMessage()));
        }
    }

    /** Something that writes a file. */
    @FunctionalInterface
    private interface Writes {
        void to(Writer writer) throws IOException;
    }

    /** A file is whole under its name, or not there. */
    private static void whole(Path file, Writes writes) throws IOException {
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(file.toAbsolutePath().getParent());
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try (Writer writer = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
            writes.to(writer);
        } catch (IOException refused) {
            Files.deleteIfExists(part);
            throw refused;
        }
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void json(Writer writer, List<BookTable> tables) throws IOException {
        JsonGenerator json = Json.MAPPER.getFactory().createGenerator(writer);
        json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.useDefaultPrettyPrinter();
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("version", BuildIdentity.text());
        json.writeObjectFieldStart("tables");
        for (BookTable table : tables) {
            json.writeObjectFieldStart(table.name());
            json.writeArrayFieldStart("columns");
            for (String column : table.columns()) {
                json.writeString(column);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("rows");
            for (List<Optional<String>> row : table.rows()) {
                json.writeStartObject();
                for (int column = 0; column < row.size(); column++) {
                    if (row.get(column).isPresent()) {
                        json.writeStringField(table.columns().get(column), row.get(column).get());
                    }
                }
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeEndObject();
        json.flush();
    }

    /**
     * Fills an empty book from what was written.
     * @param book   a new book, or one nothing was entered in
     * @param source the JSON file, or the folder of CSV files
     * @throws BadInput when the book is not empty, or what was written is not whole; then the book stays empty
     */
    public static void read(OpenBook book, Path source) throws BadInput {
        if (!Files.exists(source)) {
            throw new BadInput("%s is not there; expected what benchtwin book export wrote".formatted(source));
        }
        try {
            BookTable.fill(book.book(), Files.isDirectory(source) ? csv(source) : json(source));
        } catch (BookProblem problem) {
            throw new BadInput(problem.getMessage());
        } catch (CharacterCodingException notText) {
            throw new BadInput("%s is not UTF-8 text; expected what benchtwin book export wrote".formatted(source));
        } catch (IOException unreadable) {
            throw new BadInput("%s cannot be read: %s".formatted(source, unreadable.getMessage()));
        }
    }

    private static List<BookTable> csv(Path folder) throws BadInput, IOException {
        List<BookTable> tables = new ArrayList<>();
        for (String name : BookTable.NAMES) {
            Path file = folder.resolve(name + CSV);
            if (!Files.exists(file)) {
                throw new BadInput("%s is missing; expected %s in one folder".formatted(file, String.join(", ",
                    BookTable.NAMES.stream().map(one -> one + CSV).toList())));
            }
            try {
                PlainTable table = PlainTable.read(file.getFileName().toString(), Files.newBufferedReader(file, StandardCharsets.UTF_8));
                tables.add(new BookTable(name, table.columns(), table.rows()));
            } catch (PlainTable.NoTable noTable) {
                throw new BadInput(noTable.getMessage());
            }
        }
        return tables;
    }

    private static List<BookTable> json(Path file) throws BadInput, IOException {
        JsonNode root;
        try {
            root = Json.MAPPER.readTree(file.toFile());
        } catch (JsonProcessingException noJson) {
            throw new BadInput("%s is no JSON: line %d; expected what benchtwin book export wrote".formatted(file,
                noJson.getLocation() == null ? 0 : noJson.getLocation().getLineNr()));
        }
        if (!FORMAT.equals(root.path("format").asText())) {
            throw new BadInput("%s is no exported book; expected what benchtwin book export wrote".formatted(file));
        }
        List<BookTable> tables = new ArrayList<>();
        for (String name : BookTable.NAMES) {
            JsonNode table = root.path("tables").path(name);
            List<String> columns = new ArrayList<>();
            table.path("columns").forEach(column -> columns.add(column.asText()));
            List<List<Optional<String>>> rows = new ArrayList<>();
            table.path("rows").forEach(row -> rows.add(columns.stream().map(column ->
                Optional.ofNullable(row.get(column)).filter(cell -> !cell.isNull()).map(JsonNode::asText)).toList()));
            tables.add(new BookTable(name, columns, rows));
        }
        return tables;
    }
}
