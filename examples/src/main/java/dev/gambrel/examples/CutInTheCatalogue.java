package dev.gambrel.examples;

import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.text.TradeName;
import java.util.stream.Collectors;

/** What a word of a buyer's order may mean, with where each piece sits and its numbers. */
public final class CutInTheCatalogue {
    private CutInTheCatalogue() {}

    /**
     * Prints what sirloin of beef is.
     *
     * @param args none
     */
    public static void main(String[] args) {
        System.out.print(meanings("cattle", "sirloin"));
    }

    static String meanings(String species, String word) {
        return CatalogueSpecies.named(TradeName.of(species)).stream()
                .flatMap(known -> known.cutsCalled(TradeName.of(word)).stream())
                .map(CutInTheCatalogue::line)
                .collect(Collectors.joining());
    }

    private static String line(CatalogueCut cut) {
        String path = cut.path().stream().map(TradeName::text).collect(Collectors.joining(" / "));
        String numbers = cut.numbers().stream()
                .map(number -> number.value().scheme() + " " + number.value().number())
                .collect(Collectors.joining(", "));
        return path + ": " + numbers + "\n";
    }
}
