package dev.gambrel.json;

import dev.gambrel.tree.OtherName;
import dev.gambrel.tree.Reference;

/** Writes what something is called elsewhere, by name or by number. */
final class NameWriter {
    private NameWriter() {}

    static Canonical otherName(OtherName other) {
        return Canonical.fields().put("name", other.name()).putUnlessEmpty("regions", other.regions());
    }

    static Canonical reference(Reference reference) {
        return Canonical.fields()
                .put("scheme", reference.scheme())
                .put("number", reference.number())
                .putUnlessEmpty("edition", reference.edition());
    }
}
