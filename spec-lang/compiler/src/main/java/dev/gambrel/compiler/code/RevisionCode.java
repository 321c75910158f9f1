package dev.gambrel.compiler.code;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about a specification that revises another. All are errors. */
public enum RevisionCode implements Code {
    /** A changed line that the other specification does not have. */
    NOTHING_TO_CHANGE("G1201", "nothing-to-change", "What is revised has no {line} here."),
    /** Several lines of which one could be meant. */
    SEVERAL_TO_CHANGE(
            "G1202",
            "several-to-change",
            "What is revised has {count} such {line} lines here; which is meant cannot be told."),
    /** A share that changes while the others stay. */
    NOTHING_GIVES_WAY(
            "G1203",
            "nothing-gives-way",
            "The {part} takes {by} % of {whole} {more} than before, and no line says where the difference comes from or goes to."),
    /** A part that cannot take the difference. */
    CANNOT_GIVE_WAY("G1204", "cannot-give-way", "The {part} cannot take up the difference: {why}."),
    /** A line that only a revision has. */
    NOT_A_REVISION("G1205", "not-a-revision", "This {line} line stands in a file that revises no other."),
    /** A file that is used revises another. */
    USED_REVISION("G1206", "used-revision", "A file that is taken in with use cannot revise another."),
    /** A revision without a number of its own, or with one that does not follow. */
    REVISION_NUMBER("G1207", "revision-number", "This is to follow revision {before}, but its own number is {found}."),
    /** It says that it replaces another than it revises. */
    REPLACES_ANOTHER(
            "G1208",
            "replaces-another",
            "This says that it replaces revision {found}, but it revises revision {before}.");

    private final Kind kind;

    RevisionCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
