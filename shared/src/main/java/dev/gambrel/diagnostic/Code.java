package dev.gambrel.diagnostic;

/**
 * A kind of finding. Each room declares its kinds as an enum that implements this.
 *
 * <p>Identifiers are grouped by hundred: G01 files and limits, G02 reading a line, G03 names, G04 quantities, G05 mass,
 * G06 anatomy, G07 trims, streams and portions, G08 published figures, G09 JSON, G10 weights, G11 ways of working, G12 revisions,
 * G13 estimates, G14 portions and the bench, G15 allowances, G16 layout, G18 packs, G19 blends. An identifier is never
 * used again for something else.
 */
public interface Code {
    /**
     * All that is fixed about a kind of finding.
     *
     * @param id the stable identifier: the letter G and four digits
     * @param slug the readable identifier, as stable: lower-case words joined by hyphens
     * @param severity how much this kind of finding matters
     * @param pattern the sentence, with arguments in braces by name: "The parts of {cut} add up to {sum}."
     */
    record Kind(String id, String slug, Severity severity, String pattern) {}

    /**
     * What is fixed about this kind of finding.
     *
     * @return the same at each call
     */
    Kind kind();

    /**
     * The stable identifier.
     *
     * @return the letter G and four digits
     */
    default String id() {
        return kind().id();
    }

    /**
     * The readable identifier.
     *
     * @return lower-case words joined by hyphens
     */
    default String slug() {
        return kind().slug();
    }

    /**
     * How much this kind of finding matters.
     *
     * @return the severity
     */
    default Severity severity() {
        return kind().severity();
    }

    /**
     * The sentence, with arguments in braces by name.
     *
     * @return for example "The parts of {cut} add up to {sum}."
     */
    default String pattern() {
        return kind().pattern();
    }
}
