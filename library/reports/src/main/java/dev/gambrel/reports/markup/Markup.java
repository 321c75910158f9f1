package dev.gambrel.reports.markup;

import dev.gambrel.diagnostic.Visible;
import java.io.StringWriter;
import java.util.function.Consumer;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Elements written one after another. Whatever text comes in is escaped, and characters that hide or steer are shown as their number, so
 * that no text ends an element, runs or turns its line round. Not safe between threads.
 */
public final class Markup {
    private final XMLStreamWriter xml;

    private interface Step {
        void take() throws XMLStreamException;
    }

    private Markup(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /**
     * Writes a text.
     *
     * @param content what writes the elements
     * @return well-formed XML that ends with a line feed
     */
    public static String of(Consumer<Markup> content) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            content.accept(new Markup(xml));
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException cannotHappenInMemory) {
            throw new IllegalStateException(cannotHappenInMemory);
        }
        return out.append('\n').toString();
    }

    private Markup step(Step step) {
        try {
            step.take();
        } catch (XMLStreamException cannotHappenInMemory) {
            throw new IllegalStateException(cannotHappenInMemory);
        }
        return this;
    }

    /**
     * Says that a page of HTML follows.
     *
     * @return this
     */
    public Markup doctype() {
        return step(() -> xml.writeDTD("<!DOCTYPE html>\n"));
    }

    /**
     * Begins an element on a line of its own.
     *
     * @param name of the element
     * @param attributes names and values in turn
     * @return this
     */
    public Markup open(String name, String... attributes) {
        return step(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement(name);
            attributes(attributes);
        });
    }

    /**
     * Ends the element that was begun last.
     *
     * @return this
     */
    public Markup close() {
        return step(xml::writeEndElement);
    }

    /**
     * Words.
     *
     * @param text from anywhere
     * @return this
     */
    public Markup text(String text) {
        return step(() -> xml.writeCharacters(Visible.text(text)));
    }

    /**
     * An element with nothing in it.
     *
     * @param name of the element
     * @param attributes names and values in turn
     * @return this
     */
    public Markup empty(String name, String... attributes) {
        return step(() -> {
            xml.writeEmptyElement(name);
            attributes(attributes);
        });
    }

    /**
     * An element with a text in it.
     *
     * @param name of the element
     * @param text from anywhere
     * @param attributes names and values in turn
     * @return this
     */
    public Markup element(String name, String text, String... attributes) {
        return step(() -> {
            xml.writeStartElement(name);
            attributes(attributes);
            xml.writeCharacters(Visible.text(text));
            xml.writeEndElement();
        });
    }

    /**
     * How the page looks.
     *
     * @param rules of our own, without the characters that XML escapes and HTML then would not understand
     * @return this
     */
    public Markup style(String rules) {
        return step(() -> {
            xml.writeStartElement("style");
            xml.writeCharacters(rules);
            xml.writeEndElement();
        });
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], Visible.text(attributes[i + 1]));
        }
    }
}
