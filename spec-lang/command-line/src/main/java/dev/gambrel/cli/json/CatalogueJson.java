package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.compiler.catalogue.Cited;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** The catalogue as JSON. What is not stated is left out. */
public final class CatalogueJson {
    private final JsonGenerator json;

    private CatalogueJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one value of a list. */
    private interface Item<T> {
        void write(T value) throws IOException;
    }

    /**
     * The species that there are.
     *
     * @param catalogue all species
     * @return a JSON object, ended by a line feed
     */
    public static String list(List<CatalogueSpecies> catalogue) {
        return Canonical.text(generator -> {
            CatalogueJson json = new CatalogueJson(generator);
            json.begin("gambrel catalogue");
            json.array("species", catalogue, json::summary);
            generator.writeEndObject();
        });
    }

    /**
     * One species, its pieces within one another, and what its figures rest on.
     *
     * @param species the species
     * @return a JSON object, ended by a line feed
     */
    public static String species(CatalogueSpecies species) {
        return Canonical.text(generator -> {
            CatalogueJson json = new CatalogueJson(generator);
            json.begin("gambrel catalogue species");
            json.names(species.species().name(), species.species().otherNames());
            json.counts(species);
            json.array("pieces", species.species().pieces(), json::piece);
            json.array("sources", species.sources(), json::source);
            generator.writeEndObject();
        });
    }

    /**
     * All that is known of the cuts of one name.
     *
     * @param species the species that they are of
     * @param asked the name that was asked for
     * @param cuts the cuts; several where the name means different pieces in different regions
     * @return a JSON object, ended by a line feed
     */
    public static String cuts(CatalogueSpecies species, String asked, List<CatalogueCut> cuts) {
        return Canonical.text(generator -> {
            CatalogueJson json = new CatalogueJson(generator);
            json.begin("gambrel catalogue cuts");
            generator.writeStringField("species", species.species().name().text());
            generator.writeStringField("asked", asked);
            json.array("cuts", cuts, json::cut);
            json.array("anatomySources", species.anatomySources(), json::source);
            generator.writeEndObject();
        });
    }

    private void begin(String format) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", format);
        json.writeNumberField("version", 1);
    }

    private <T> void array(String field, List<T> values, Item<T> item) throws IOException {
        json.writeArrayFieldStart(field);
        for (T value : values) {
            item.write(value);
        }
        json.writeEndArray();
    }

    private void summary(CatalogueSpecies species) throws IOException {
        json.writeStartObject();
        names(species.species().name(), species.species().otherNames());
        json.writeNumberField("pieces", species.pieces().size());
        json.writeNumberField("sources", species.sources().size());
        json.writeEndObject();
    }

    private void names(TradeName name, List<OtherName> others) throws IOException {
        json.writeStringField("name", name.text());
        array("otherNames", others, this::otherName);
    }

    private void otherName(OtherName name) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", name.name().text());
        array("regions", name.regions(), json::writeString);
        json.writeEndObject();
    }

    private void counts(CatalogueSpecies species) throws IOException {
        count("ribs", species.species().ribs());
        json.writeObjectFieldStart("vertebrae");
        for (Map.Entry<SpineRegion, AnatomicalCount> region :
                species.species().vertebrae().entrySet()) {
            count(region.getKey().words(), region.getValue());
        }
        json.writeEndObject();
    }

    private void count(String field, AnatomicalCount count) throws IOException {
        if (count.isStated()) {
            json.writeObjectFieldStart(field);
            json.writeNumberField("least", count.least());
            json.writeNumberField("most", count.most());
            json.writeEndObject();
        }
    }

    private void piece(Piece piece) throws IOException {
        json.writeStartObject();
        names(piece.name(), piece.otherNames());
        perCarcass(piece.pieces());
        array("pieces", piece.parts(), this::piece);
        json.writeEndObject();
    }

    private void perCarcass(PieceCount count) throws IOException {
        if (count != PieceCount.NOT_STATED) {
            json.writeNumberField("perCarcass", count.perCarcass(1));
        }
    }

    private void cut(CatalogueCut cut) throws IOException {
        json.writeStartObject();
        names(cut.piece().name(), cut.piece().otherNames());
        array("path", cut.path(), name -> json.writeString(name.text()));
        perCarcass(cut.piece().pieces());
        array("alsoMeans", cut.sameWords(), this::sameWord);
        array("bones", cut.contents().bones(), this::structure);
        array("muscles", cut.contents().muscles(), this::structure);
        array("glands", cut.contents().glands(), this::structure);
        array(
                "pieces",
                cut.piece().parts(),
                part -> json.writeString(part.name().text()));
        array("shares", cut.shares(), this::share);
        array("numbers", cut.numbers(), this::number);
        json.writeEndObject();
    }

    private void sameWord(CatalogueCut.SameWord same) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", same.word().name().text());
        array("regions", same.word().regions(), json::writeString);
        json.writeStringField("piece", same.means().text());
        json.writeEndObject();
    }

    private void structure(Piece.Structure structure) throws IOException {
        json.writeStartObject();
        names(structure.name(), structure.otherNames());
        json.writeEndObject();
    }

    private void share(Cited<Piece.Published> share) throws IOException {
        json.writeStartObject();
        json.writeStringField("share", share.value().expected().toString());
        json.writeStringField("of", share.value().of().text());
        array("sources", share.sources(), this::source);
        json.writeEndObject();
    }

    private void number(Cited<Reference> number) throws IOException {
        Reference reference = number.value();
        json.writeStartObject();
        json.writeStringField("scheme", reference.scheme().text());
        json.writeStringField("number", reference.number());
        if (!reference.edition().isEmpty()) {
            json.writeStringField("edition", reference.edition());
        }
        array("sources", number.sources(), this::source);
        json.writeEndObject();
    }

    private void source(Source source) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", source.name().text());
        json.writeStringField("kind", source.kind().words());
        json.writeStringField("citation", source.citation());
        json.writeEndObject();
    }
}
