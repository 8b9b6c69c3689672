package org.heatfloor.examples;

import java.awt.Graphics2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Makes Scalable Vector Graphics text of a drawing. */
final class SvgText {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private SvgText() {}

    /** The SVG of a drawing in hundredths of a millimetre on a sheet of the given millimetres. */
    static String of(double width, double height, String title, Consumer<Graphics2D> drawing) {
        try {
            DOMImplementation dom =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation();
            Document document = dom.createDocument(NAMESPACE, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setPrecision(1);
            context.setComment(null);
            SVGGraphics2D graphics = new SVGGraphics2D(context, false);
            drawing.accept(graphics);
            Element root = graphics.getRoot();
            root.setAttributeNS(null, "width", plain(width) + "mm");
            root.setAttributeNS(null, "height", plain(height) + "mm");
            root.setAttributeNS(
                    null, "viewBox", "0 0 " + plain(width * LineKind.UNITS) + " " + plain(height * LineKind.UNITS));
            Element name = document.createElementNS(NAMESPACE, "title");
            name.setTextContent(title);
            root.insertBefore(name, root.getFirstChild());
            StringWriter text = new StringWriter();
            graphics.stream(root, text, false, false);
            return text.toString().replace("\r\n", "\n");
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("no XML parser", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value));
    }
}
