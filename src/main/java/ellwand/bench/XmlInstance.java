package ellwand.bench;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The XML form of the ESICUP data sets, whatever its namespace. */
final class XmlInstance {

  private final Map<String, Outline> outlines = new HashMap<>();

  private XmlInstance() {}

  /** The strip's width is the smaller side of the board. */
  static Instance read(String name, InputStream in) throws IOException {
    Element root;
    try {
      root = parser().parse(in).getDocumentElement();
    } catch (SAXException e) {
      throw new IOException("no XML that can be read: " + e.getMessage(), e);
    }
    if (!"nesting".equals(root.getLocalName())) {
      throw new IOException("the root element is '" + root.getLocalName() + "', not 'nesting'");
    }
    return new XmlInstance().instance(name, root);
  }

  private static DocumentBuilder parser() {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setExpandEntityReferences(false);
    try {
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      return builder;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("this Java can't refuse document types", e);
    }
  }

  private Instance instance(String name, Element root) throws IOException {
    for (Element polygon : children(only(root, "polygons"), "polygon")) {
      outlines.put(polygon.getAttribute("id"), outline(polygon));
    }
    Element problem = only(root, "problem");
    List<Element> boards = children(only(problem, "boards"), "piece");
    if (boards.isEmpty()) {
      throw new IOException("it has no board");
    }
    Box board = outline(boards.get(0), "the board").box();
    List<Instance.Item> items = new ArrayList<>();
    for (Element piece : children(only(problem, "lot"), "piece")) {
      items.add(
          new Instance.Item(
              outline(piece, piece.getAttribute("id")),
              (int) number(piece, "quantity"),
              rotations(piece)));
    }
    return new Instance(name, Math.min(board.length(), board.width()), items);
  }

  private Outline outline(Element piece, String what) throws IOException {
    List<Element> components = children(piece, "component");
    if (components.size() != 1 || !"0".equals(components.get(0).getAttribute("type"))) {
      throw new IOException(what + " is made of several polygons or has a hole: not read");
    }
    Outline outline = outlines.get(components.get(0).getAttribute("idPolygon"));
    if (outline == null) {
      throw new IOException(what + " names a polygon that isn't there");
    }
    return outline;
  }

  private static List<Double> rotations(Element piece) throws IOException {
    List<Double> rotations = new ArrayList<>();
    for (Element orientation : children(piece, "orientation")) {
      for (Element enumeration : children(orientation, "enumeration")) {
        rotations.add(number(enumeration, "angle"));
      }
    }
    return rotations.isEmpty() ? List.of(0.0) : rotations;
  }

  private static Outline outline(Element polygon) throws IOException {
    List<Point> points = new ArrayList<>();
    for (Element segment : children(only(polygon, "lines"), "segment")) {
      points.add(new Point(number(segment, "x0"), number(segment, "y0")));
    }
    return Outline.of(points);
  }

  private static Element only(Element parent, String name) throws IOException {
    List<Element> found = children(parent, name);
    if (found.isEmpty()) {
      throw new IOException("'" + parent.getLocalName() + "' has no '" + name + "'");
    }
    return found.get(0);
  }

  private static List<Element> children(Element parent, String name) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = parent.getChildNodes();
    for (int i = 0; i < nodes.getLength(); i++) {
      Node node = nodes.item(i);
      if (node instanceof Element e && name.equals(e.getLocalName())) {
        found.add(e);
      }
    }
    return found;
  }

  private static double number(Element element, String attribute) throws IOException {
    String text = element.getAttribute(attribute).strip();
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new IOException(
          "'" + element.getLocalName() + "' has no number in '" + attribute + "'", e);
    }
  }
}
