package dev.gambrel.json.located;

/**
 * What a file of ours says first: what kind of file it is, and in which version of its form.
 *
 * @param format the words of the field "format"
 * @param version the only version that is read
 */
public record FileFormat(String format, int version) {
    /**
     * Whether a value is the format; if not, that is told.
     *
     * @param value what stands in the field "format"
     * @param findings where it is told
     * @return true if it is
     */
    public boolean isFormat(Located value, Findings findings) {
        if (!(value instanceof Located.Text text)) {
            findings.wrongType(value, "text in quotation marks");
            return false;
        }
        boolean isOurs = text.text().equals(format);
        if (!isOurs) {
            findings.add(findings.at(JsonCode.WRONG_FORMAT, value.pointer(), value.span())
                    .with("found", Shown.of(text.text()))
                    .with("allowed", format));
        }
        return isOurs;
    }

    /**
     * Whether a value is the version; if not, that is told.
     *
     * @param value what stands in the field "version"
     * @param findings where it is told
     * @return true if it is
     */
    public boolean isVersion(Located value, Findings findings) {
        if (!(value instanceof Located.Figure figure)) {
            findings.wrongType(value, "the number " + version);
            return false;
        }
        boolean isOurs = figure.digits().equals(Integer.toString(version));
        if (!isOurs) {
            findings.add(findings.at(JsonCode.UNKNOWN_VERSION, value.pointer(), value.span())
                    .with("found", Shown.of(figure.digits()))
                    .with("allowed", version)
                    .help("Ask the sender for version " + version + ", or use a newer Gambrel."));
        }
        return isOurs;
    }
}
