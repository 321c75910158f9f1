package dev.gambrel.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Writes what whole processes are timed on: carcasses as a CSV file, and the sheets of 150 parts with and without estimates. */
public final class CarcassesFile {
    private CarcassesFile() {}

    /**
     * Writes {@code carcasses.csv}, {@code fixed.cuts} and {@code estimated.cuts}.
     *
     * @param args two: the folder, and how many carcasses
     * @throws IOException if they cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.writeString(folder.resolve("fixed.cuts"), SpecText.of(150));
        Files.writeString(folder.resolve("estimated.cuts"), EstimatedSheet.text(150));
        DrawnCarcasses carcasses = DrawnCarcasses.of(Integer.parseInt(args[1]));
        try (PrintStream out = new PrintStream(folder.resolve("carcasses.csv").toFile(), StandardCharsets.UTF_8)) {
            out.print("tag,cold weight (kg),back fat (mm)\n");
            for (int i = 0; i < carcasses.count(); i++) {
                out.print(String.format(
                        Locale.ROOT,
                        "M%07d,%.2f,%.1f%n",
                        i,
                        carcasses.kilograms()[i],
                        carcasses.backFat()[i]));
            }
        }
    }
}
