package dev.gambrel.reports.png;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can stand in the way of an image. */
public enum ImageCode implements Code {
    /** There is nothing to write letters with. */
    NO_FONTS(
            "G2501",
            "no-fonts",
            "This machine has no fonts that can be used, so no words can be drawn on an image of {width} by {height} dots."),
    /** It would take more memory than is granted. */
    IMAGE_TOO_LARGE(
            "G2502",
            "image-too-large",
            "The image would have {width} by {height} dots, {dots} million together; at most {limit} million are drawn.");

    private final Kind kind;

    ImageCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
