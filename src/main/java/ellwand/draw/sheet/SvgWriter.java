package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes drawings as SVG: one user unit is 1 mm, x as on the table, y its negative. */
public final class SvgWriter {

  private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;

  private final Document document =
      SVGDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);

  private SvgWriter() {}

  static Document document(Drawing drawing) {
    SvgWriter writer = new SvgWriter();
    writer.write(drawing);
    return writer.document;
  }

  /** As a file in UTF-8. */
  public static byte[] bytes(Drawing drawing) {
    return bytes(document(drawing));
  }

  /** The same over a photo. */
  public static byte[] bytes(Drawing drawing, Backdrop backdrop) {
    SvgWriter writer = new SvgWriter();
    writer.write(drawing);
    writer.putUnder(backdrop);
    return bytes(writer.document);
  }

  private static byte[] bytes(Document document) {
    try {
      Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
      transformer.setOutputProperty(OutputKeys.INDENT, "yes");
      StringWriter text = new StringWriter();
      transformer.transform(new DOMSource(document), new StreamResult(text));
      return text.toString().getBytes(StandardCharsets.UTF_8);
    } catch (TransformerException e) {
      throw new IllegalStateException("the drawing cannot be written as SVG", e);
    }
  }

  private void write(Drawing drawing) {
    Element root = document.getDocumentElement();
    Box frame = drawing.frame();
    root.setAttribute("width", number(frame.length()) + "mm");
    root.setAttribute("height", number(frame.width()) + "mm");
    root.setAttribute(
        "viewBox",
        String.join(
            " ",
            number(frame.minX()),
            number(-frame.maxY()),
            number(frame.length()),
            number(frame.width())));
    root.setAttribute("font-family", Lettering.FAMILY);
    root.setAttribute("fill", "none");
    root.setAttribute("stroke-linecap", "round");
    root.setAttribute("stroke-linejoin", "round");
    root.appendChild(title(drawing.title()));
    Element paper = element(root, "rect");
    paper.setAttribute("x", number(frame.minX()));
    paper.setAttribute("y", number(-frame.maxY()));
    paper.setAttribute("width", number(frame.length()));
    paper.setAttribute("height", number(frame.width()));
    paper.setAttribute("fill", Colour.WHITE.hex());
    drawing.items().forEach(item -> write(root, item));
  }

  private void putUnder(Backdrop backdrop) {
    Element root = document.getDocumentElement();
    Element paper = (Element) root.getElementsByTagNameNS(SVG, "rect").item(0);
    Box box = backdrop.box();
    Element image = document.createElementNS(SVG, "image");
    image.setAttribute("x", number(box.minX()));
    image.setAttribute("y", number(-box.maxY()));
    image.setAttribute("width", number(box.length()));
    image.setAttribute("height", number(box.width()));
    image.setAttribute("preserveAspectRatio", "none");
    image.setAttribute(
        "href", "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(backdrop.jpeg()));
    root.insertBefore(image, paper.getNextSibling());
  }

  private void write(Element parent, Item item) {
    if (item instanceof Item.Group group) {
      Element g = element(parent, "g");
      g.setAttribute("id", group.id());
      g.setAttribute("class", group.kind());
      group.title().ifPresent(t -> g.appendChild(title(t)));
      group.items().forEach(i -> write(g, i));
    } else if (item instanceof Item.Lines lines) {
      Element path = element(parent, "path");
      path.setAttribute("class", lines.kind());
      path.setAttribute("d", data(lines));
      ink(path, lines.ink());
    } else if (item instanceof Item.Text text) {
      write(parent, text);
    }
  }

  private void write(Element parent, Item.Text text) {
    Element element = element(parent, "text");
    element.setAttribute("class", text.kind());
    String at = number(text.at().x()) + " " + number(-text.at().y());
    element.setAttribute(
        "transform",
        "translate(" + at + ")" + (text.turnDegrees() == 0 ? "" : turn(text.turnDegrees())));
    element.setAttribute("font-size", number(text.sizeMm()));
    element.setAttribute("fill", text.colour().hex());
    if (text.anchor() != Item.Anchor.START) {
      element.setAttribute("text-anchor", text.anchor().name().toLowerCase(Locale.ROOT));
    }
    if (text.strong()) {
      element.setAttribute("stroke", text.colour().hex());
      element.setAttribute("stroke-width", number(text.sizeMm() * Lettering.STRONG));
    }
    // Keeps the words within the room that was measured for them, whatever type the viewer has.
    element.setAttribute("textLength", number(text.widthMm()));
    element.setAttribute("lengthAdjust", "spacingAndGlyphs");
    element.setTextContent(text.words());
  }

  private static String turn(double degrees) {
    return " rotate(" + number(-degrees) + ")";
  }

  private static void ink(Element path, Ink ink) {
    ink.fill().ifPresent(c -> path.setAttribute("fill", c.hex()));
    ink.line()
        .ifPresent(
            c -> {
              path.setAttribute("stroke", c.hex());
              path.setAttribute("stroke-width", number(ink.widthMm()));
            });
    if (!ink.dashesMm().isEmpty()) {
      path.setAttribute(
          "stroke-dasharray",
          ink.dashesMm().stream().map(SvgWriter::number).collect(Collectors.joining(" ")));
    }
  }

  private static String data(Item.Lines lines) {
    StringBuilder data = new StringBuilder();
    for (List<Point> line : lines.lines()) {
      for (int i = 0; i < line.size(); i++) {
        data.append(i == 0 ? "M" : " L")
            .append(number(line.get(i).x()))
            .append(' ')
            .append(number(-line.get(i).y()));
      }
      data.append(lines.closed() ? " Z" : "");
    }
    return data.toString();
  }

  private Element title(String words) {
    Element title = document.createElementNS(SVG, "title");
    title.setTextContent(words);
    return title;
  }

  private Element element(Element parent, String name) {
    Element element = document.createElementNS(SVG, name);
    parent.appendChild(element);
    return element;
  }

  /** To a thousandth of a mm, which is finer than any blade. */
  public static String number(double value) {
    double thousandths = Math.abs(value) * 1000;
    long whole = Math.round(thousandths);
    // Half way between two a double is not exact enough to tell.
    boolean clear = Math.abs(thousandths - Math.floor(thousandths) - 0.5) > 1e-4;
    if (!clear || !(thousandths < 1e12)) {
      String text = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
      return text.equals("-0") || text.isEmpty() ? "0" : text;
    }
    StringBuilder text = new StringBuilder(value < 0 && whole > 0 ? "-" : "");
    text.append(whole / 1000);
    long part = whole % 1000;
    if (part > 0) {
      text.append('.').append((char) ('0' + part / 100));
      if (part % 100 > 0) {
        text.append((char) ('0' + part / 10 % 10));
      }
      if (part % 10 > 0) {
        text.append((char) ('0' + part % 10));
      }
    }
    return text.toString();
  }
}
