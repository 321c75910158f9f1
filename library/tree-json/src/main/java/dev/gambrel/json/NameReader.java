package dev.gambrel.json;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.OtherName;
import dev.gambrel.tree.Reference;

/** Reads what something is called, here and elsewhere, by name or by number. */
final class NameReader {
    static final Reading<OtherName> OTHER_NAME =
            Readings.object(in -> new OtherName(name(in), in.list("regions", Readings::text)));

    static final Reading<Reference> REFERENCE = Readings.object(in -> new Reference(
            in.need("scheme", "who numbers", Readings::name),
            in.need("number", "the number in quotation marks", Readings::text),
            in.optional("edition", "", Readings::text)));

    private NameReader() {}

    static TradeName name(ObjectReader in) {
        return in.need("name", "a name", Readings::name);
    }
}
