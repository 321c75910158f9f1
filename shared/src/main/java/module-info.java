/** The words that everything else uses: source text and places, findings as data, exact quantities with units, limits. */
module dev.gambrel.shared {
    exports dev.gambrel.diagnostic;
    exports dev.gambrel.limits;
    exports dev.gambrel.quantity;
    exports dev.gambrel.text;
}
