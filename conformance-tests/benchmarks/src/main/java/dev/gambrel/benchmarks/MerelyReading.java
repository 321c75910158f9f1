package dev.gambrel.benchmarks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;

/** Reads every cell of a CSV file with a well-kept library and does nothing with it, as a process to be timed against ours. */
public final class MerelyReading {
    private MerelyReading() {}

    /**
     * Reads a file.
     *
     * @param args one: the file
     * @throws IOException if it cannot be read
     */
    public static void main(String[] args) throws IOException {
        long cells = 0;
        long characters = 0;
        try (CsvReader<CsvRecord> rows = CsvReader.builder().ofCsvRecord(Path.of(args[0]))) {
            for (CsvRecord row : rows) {
                cells += row.getFieldCount();
                for (int i = 0; i < row.getFieldCount(); i++) {
                    characters += row.getField(i).length();
                }
            }
        }
        System.out.println(cells + " cells, " + characters + " characters");
    }
}
