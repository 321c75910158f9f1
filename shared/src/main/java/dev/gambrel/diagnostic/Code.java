package dev.gambrel.diagnostic;

/**
 * A kind of finding. Each room declares its kinds as an enum that implements this.
 *
 * <p>Identifiers are grouped by hundred: G01 files and limits, G02 reading a line, G03 names, G04 quantities, G05 mass,
 * G06 anatomy, G07 trims, streams and portions, G08 published figures, G09 JSON, G10 weights. An identifier is never
 * used again for something else.
 */
public interface Code {
    /**
     * The stable identifier.
     *
     * @return the letter G and four digits
     */
    String id();

    /**
     * The readable identifier, as stable as {@link #id()}.
     *
     * @return lower-case words joined by hyphens
     */
    String slug();

    /**
     * How much this kind of finding matters.
     *
     * @return the severity
     */
    Severity severity();

    /**
     * The sentence, with arguments in braces by name.
     *
     * @return for example "The parts of {cut} add up to {sum}."
     */
    String pattern();
}
