package dev.gambrel.yields.conformance.number;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.claims.Claim;
import dev.gambrel.references.claims.Comparison;
import dev.gambrel.references.claims.Comparisons;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.item.PublishedItems;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.ranges.PieceRange;
import dev.gambrel.references.ranges.PublishedRanges;
import dev.gambrel.references.ranges.RangeTable;
import dev.gambrel.references.unece.MeatCode;
import dev.gambrel.references.unece.MeatCodes;
import dev.gambrel.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is held of a reference number as somebody wrote it. Where editions differ and none is named, nothing is concluded.
 *
 * @param items what the number means; none or one
 * @param codes the meat code that it is; none or one
 * @param tables the weight ranges that are printed for it
 */
record PublishedNumber(List<Item> items, List<MeatCode> codes, List<RangeTable> tables) {
    static PublishedNumber of(dev.gambrel.tree.anatomy.Reference written) {
        Optional<Scheme> scheme = Scheme.of(written.scheme().text());
        if (scheme.isEmpty()) {
            return new PublishedNumber(List.of(), List.of(), List.of());
        }
        Reference reference = new Reference(scheme.get(), written.number(), written.edition());
        List<Item> items =
                PublishedItems.lookUp(reference) instanceof Meaning.Known known ? List.of(known.item()) : List.of();
        return new PublishedNumber(
                items, meatCode(written).flatMap(Result::value).stream().toList(), PublishedRanges.of(reference));
    }

    /** A number of the length of a meat code, read as one; nothing for any other number. */
    static Optional<Result<MeatCode>> meatCode(dev.gambrel.tree.anatomy.Reference written) {
        boolean isCode =
                Scheme.of(written.scheme().text()).filter(Scheme.UNECE::equals).isPresent()
                        && written.number().length() == MeatCode.LENGTH;
        return isCode ? Optional.of(MeatCodes.decode(new SourceText("meat code", written.number()))) : Optional.empty();
    }

    /** How something that words claim stands to it, by all that is held of it. */
    List<Comparison> compared(Claim claim, String range) {
        List<Comparison> found = new ArrayList<>();
        items.forEach(item -> found.add(Comparisons.of(item, claim)));
        codes.forEach(code -> found.add(Comparisons.of(code, claim)));
        if (claim instanceof Claim.PieceWeight weight) {
            tables.stream()
                    .flatMap(table -> table.range(range).stream().map(piece -> Comparisons.of(table, piece, weight)))
                    .forEach(found::add);
        }
        return found;
    }

    /** The ranges of a name, in every edition that is meant. */
    Stream<Ranged> ranged(String range) {
        return tables.stream().flatMap(table -> table.range(range).stream().map(piece -> new Ranged(table, piece)));
    }

    /**
     * A range and the table that it stands in.
     *
     * @param table the table
     * @param piece the range
     */
    record Ranged(RangeTable table, PieceRange piece) {}
}
