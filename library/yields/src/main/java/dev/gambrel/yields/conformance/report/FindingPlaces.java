package dev.gambrel.yields.conformance.report;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Label;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.yields.conformance.number.NumberCode;
import java.util.ArrayList;
import java.util.List;

/**
 * The places of a finding, each in the tree that it belongs to.
 *
 * @param buyer those in the buyer's tree, the finding's own first
 * @param house those in the house's tree
 */
public record FindingPlaces(List<Place> buyer, List<Place> house) {
    /** Copies the lists. */
    public FindingPlaces {
        buyer = List.copyOf(buyer);
        house = List.copyOf(house);
    }

    /**
     * Sorts the places of a finding. What is related lies in the house's tree, save where a number and the words beside it
     * both stand in the buyer's.
     *
     * @param finding a finding of a comparison
     * @return its places
     */
    public static FindingPlaces of(Diagnostic finding) {
        List<Place> related = finding.related().stream().map(Label::place).toList();
        boolean isOfBuyerAlone =
                finding.code() instanceof NumberCode && finding.code() != NumberCode.HOUSE_NUMBER_AGAINST_WORDS;
        List<Place> buyer = new ArrayList<>(List.of(finding.place()));
        if (isOfBuyerAlone) {
            buyer.addAll(related);
        }
        return new FindingPlaces(buyer, isOfBuyerAlone ? List.of() : related);
    }
}
