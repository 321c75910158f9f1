package dev.gambrel.cli.catalogue;

import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.compiler.catalogue.Cited;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Piece.Published;
import dev.gambrel.tree.anatomy.Reference;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** One cut of the catalogue, told as one cutter tells another: where it sits, what is in it, what print says. */
final class CutText {
    private static final String LABELLED = "  %-34s%s";

    private final CatalogueSpecies species;
    private final Set<Source> cited = new LinkedHashSet<>();
    private final StringBuilder out = new StringBuilder();

    private CutText(CatalogueSpecies species) {
        this.species = species;
    }

    /**
     * The page of a cut.
     *
     * @param species the species that it is of
     * @param cut the cut
     * @return lines, each ended by a line feed
     */
    public static String of(CatalogueSpecies species, CatalogueCut cut) {
        return new CutText(species).page(cut);
    }

    private String page(CatalogueCut cut) {
        Piece piece = cut.piece();
        line(piece.name() + ", " + species.species().name());
        line("  where it sits: carcass / "
                + cut.path().stream().map(TradeName::text).collect(Collectors.joining(" / ")));
        line("  how many: " + CatalogueText.count(piece.pieces()));
        if (!piece.otherNames().isEmpty()) {
            line("  also called: " + CatalogueText.names(piece.otherNames(), "; "));
        }
        cut.sameWords().forEach(this::sameWord);
        contents(cut.contents());
        if (!piece.parts().isEmpty()) {
            line("smaller pieces in it");
            line("  " + piece.parts().stream().map(part -> part.name().text()).collect(Collectors.joining(", ")));
        }
        shares(cut.shares());
        numbers(cut.numbers());
        if (!cited.isEmpty()) {
            line("sources, and how sure");
            out.append(CatalogueText.sources(List.copyOf(cited)));
        }
        return out.toString();
    }

    private void sameWord(CatalogueCut.SameWord same) {
        String where = same.word().regions().isEmpty()
                ? ""
                : " (" + String.join(", ", same.word().regions()) + ")";
        line("  beware: “" + same.word().name() + "” is also the " + same.means() + where);
    }

    private void contents(Piece.Anatomy contents) {
        line("what is in it");
        structures("bones", contents.bones());
        structures("muscles", contents.muscles());
        structures("glands", contents.glands());
        cited.addAll(species.anatomySources());
    }

    private void structures(String kind, List<Piece.Structure> structures) {
        line("  " + kind + ": "
                + (structures.isEmpty()
                        ? "none named"
                        : structures.stream().map(CutText::structure).collect(Collectors.joining(", "))));
    }

    private static String structure(Piece.Structure structure) {
        return structure.otherNames().isEmpty()
                ? structure.name().text()
                : structure.name() + " (" + CatalogueText.names(structure.otherNames(), "; ") + ")";
    }

    private void shares(List<Cited<Published>> shares) {
        line("what print says of its weight" + (shares.isEmpty() ? ": nothing that the catalogue has" : ""));
        for (Cited<Published> share : shares) {
            labelled(share.value().expected() + " of " + share.value().of(), share.sources());
        }
    }

    private void numbers(List<Cited<Reference>> numbers) {
        line("numbers in published schemes" + (numbers.isEmpty() ? ": none that the catalogue has" : ""));
        for (Cited<Reference> number : numbers) {
            Reference reference = number.value();
            String edition = reference.edition().isEmpty() ? "" : ", edition " + reference.edition();
            labelled(reference.scheme() + " " + reference.number() + edition, number.sources());
        }
    }

    private void labelled(String label, List<Source> sources) {
        cited.addAll(sources);
        String names = sources.stream().map(source -> source.name().text()).collect(Collectors.joining("; "));
        line(String.format(Locale.ROOT, LABELLED, label, names));
    }

    private void line(String text) {
        out.append(Visible.text(text)).append('\n');
    }
}
