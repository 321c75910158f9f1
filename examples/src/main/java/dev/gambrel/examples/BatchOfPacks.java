package dev.gambrel.examples;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.packs.Batch;
import dev.gambrel.yields.packs.BatchVerdict;
import dev.gambrel.yields.packs.RuleResult;
import dev.gambrel.yields.packs.WeighedPacks;
import dev.gambrel.yields.packs.planning.PackAim;
import dev.gambrel.yields.packs.rule.Directive76211;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Whether a batch of 600 packs of 200 g passes its reference test, from one net weight in grams a line. */
public final class BatchOfPacks {
    private BatchOfPacks() {}

    /**
     * Prints what each rule says, and the lowest mean to aim at with packs that stray so.
     *
     * @param args the file
     * @throws IOException if it cannot be read
     */
    public static void main(String[] args) throws IOException {
        System.out.print(verdict(Files.readAllLines(Path.of(args[0]))));
    }

    static String verdict(List<String> lines) {
        WeighedPacks packs = new WeighedPacks(lines.stream()
                .filter(line -> !line.startsWith("//"))
                .map(line -> Quantity.of(line, Unit.GRAM))
                .toList());
        Batch batch = new Batch(600, Quantity.of("200", Unit.GRAM));
        BatchVerdict verdict =
                BatchVerdict.of(Directive76211.NOT_DESTRUCTIVE, batch, packs).orElseThrow();
        StringBuilder text = new StringBuilder("batch " + verdict.answer().words() + "\n");
        for (RuleResult result : verdict.results()) {
            text.append(result.rule().words() + ": " + result.answer().words() + ", " + result.citation() + "\n");
        }
        double spread = packs.deviation().orElseThrow().doubleValue();
        double mean = new PackAim(verdict.tolerance(), spread, 0).mean();
        return text.append("aim at " + Math.ceil(mean * 10_000) / 10 + " g or more\n" + BatchVerdict.CAUTION + "\n")
                .toString();
    }
}
