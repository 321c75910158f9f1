package dev.gambrel.cli.shares;

import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import dev.gambrel.yields.testedcuts.Mean;
import dev.gambrel.yields.testedcuts.Prior;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The source of found shares: how many tests, of which days, on which sheets. One for each set of sheets. */
final class TestSource {
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern NAMES_APART = Pattern.compile(": |, |; ");
    private static final String NAME = "cutting tests";

    private final CutTree tree;
    private final Mean mean;
    private final Prior prior;
    private final Map<String, Source> named = new HashMap<>();

    TestSource(CutTree tree, Mean mean, Prior prior) {
        this.tree = tree;
        this.mean = mean;
        this.prior = prior;
    }

    /** One that is declared already is cited again. */
    Source of(List<WeighSheet> sheets) {
        return named.computeIfAbsent(
                words(sheets) + weight(),
                words -> tree.sources().stream()
                        .filter(source -> source.kind() == Source.Kind.MEASURED
                                && source.citation().equals(words))
                        .findFirst()
                        .orElseGet(() -> new Source(freeName(sheets), Source.Kind.MEASURED, words)));
    }

    /** Whether some figure rests on one of these tests, whatever it was drawn towards. */
    static boolean isOf(Source source, List<WeighSheet> sheets) {
        List<String> cited = Arrays.asList(NAMES_APART.split(source.citation()));
        return sheets.stream().map(sheet -> Visible.text(sheet.name())).anyMatch(cited::contains);
    }

    private String words(List<WeighSheet> sheets) {
        return sheets.size() + (sheets.size() == 1 ? " cutting test" : " cutting tests") + days(sheets) + ": "
                + names(sheets) + "; " + mean.words().substring(0, mean.words().indexOf(':'));
    }

    private String weight() {
        return prior instanceof Prior.Stated stated
                ? "; what was stated before counts as "
                        + BigDecimal.valueOf(stated.worth().tests())
                                .stripTrailingZeros()
                                .toPlainString() + " tests"
                : "";
    }

    private static String names(List<WeighSheet> sheets) {
        return sheets.stream().map(sheet -> Visible.text(sheet.name())).collect(Collectors.joining(", "));
    }

    private static String days(List<WeighSheet> sheets) {
        List<String> days = sheets.stream()
                .map(sheet -> sheet.heading().date())
                .distinct()
                .sorted()
                .toList();
        if (!days.stream().allMatch(day -> DAY.matcher(day).matches())) {
            return "";
        }
        String last = days.get(days.size() - 1);
        return days.size() == 1 ? " of " + last : " from " + days.get(0) + " to " + last;
    }

    private TradeName freeName(List<WeighSheet> sheets) {
        String day = sheets.get(sheets.size() - 1).heading().date();
        String dated = DAY.matcher(day).matches() ? NAME + " of " + day : NAME;
        String name = NAME;
        for (int number = 1; isTaken(TradeName.of(name)); number++) {
            name = number == 1 ? dated : String.format(Locale.ROOT, "%s, %d", dated, number);
        }
        return TradeName.of(name);
    }

    private boolean isTaken(TradeName name) {
        return tree.source(name).isPresent()
                || named.values().stream().anyMatch(source -> source.name().equals(name));
    }
}
