package ellwand.file.svg;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the elements of an XML file. Of a document type only the few short entities are known that
 * it declares itself; nothing is fetched.
 */
final class SvgXml {

  private static final String IGNORE_EXTERNAL_DTD =
      "http://java.sun.com/xml/stream/properties/ignore-external-dtd";

  private static final String LIMIT = "http://www.oracle.com/xml/jaxp/properties/";

  /** Some programs write the names of namespaces as entities; that takes no more. */
  private static final Map<String, String> LIMITS =
      Map.of("entityExpansionLimit", "1000", "totalEntitySizeLimit", "100000");

  private static final String ELSEWHERE = "an entity of another file";

  /** How the parser says that an entity is not known or stands for too much. */
  private static final Pattern ENTITY =
      Pattern.compile(ELSEWHERE + "|entity (reference )?\"|JAXP\\d");

  private static final int MOST_ELEMENTS = 200_000;
  private static final int DEEPEST = 200;

  private static final Pattern ENCODING =
      Pattern.compile("^\\s*<\\?xml[^>]*encoding\\s*=\\s*[\"']([\\w.:-]+)[\"']");

  private final String file;
  private final XMLStreamReader in;

  private SvgXml(String file, XMLStreamReader in) {
    this.file = file;
    this.in = in;
  }

  /**
   * The root element.
   *
   * @throws InputException if it is no XML, or too large or deep
   */
  static SvgElement read(String file, byte[] bytes) {
    try {
      return new SvgXml(file, factory().createXMLStreamReader(new StringReader(text(bytes))))
          .root();
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
      boolean entity = ENTITY.matcher(String.valueOf(e.getMessage())).find();
      throw refused(
          file,
          line,
          entity ? "it uses an entity that is not looked up" : "this is no whole XML file",
          "Save the drawing again as plain SVG");
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setProperty(IGNORE_EXTERNAL_DTD, true);
    LIMITS.forEach((name, most) -> factory.setProperty(LIMIT + name, most));
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException(ELSEWHERE);
        });
    return factory;
  }

  /** As its first line says it is written; decoded here, since the parser prints what it cannot. */
  private static String text(byte[] bytes) throws XMLStreamException {
    String head = new String(bytes, 0, Math.min(bytes.length, 200), StandardCharsets.ISO_8859_1);
    Matcher declared = ENCODING.matcher(head);
    boolean wide = head.startsWith("\u00FE\u00FF") || head.startsWith("\u00FF\u00FE");
    try {
      String name = wide ? "UTF-16" : declared.find() ? declared.group(1) : "UTF-8";
      String text = Charset.forName(name).newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException | IllegalArgumentException e) {
      throw new XMLStreamException(e);
    }
  }

  private SvgElement root() throws XMLStreamException {
    Deque<SvgElement> open = new ArrayDeque<>();
    SvgElement root = null;
    int count = 0;
    while (in.hasNext()) {
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        SvgElement element = element();
        if (open.isEmpty()) {
          root = element;
        } else {
          open.peek().children.add(element);
        }
        open.push(element);
        count++;
        if (count > MOST_ELEMENTS || open.size() > DEEPEST) {
          throw refused(
              file,
              element.line,
              count > MOST_ELEMENTS
                  ? "it has more than 200,000 elements"
                  : "its groups lie more than 200 deep in one another",
              "Leave out of the drawing what is no pattern");
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        open.pop();
      } else if (event == XMLStreamConstants.CHARACTERS && !open.isEmpty()) {
        open.peek().text.append(in.getText());
      }
    }
    return root;
  }

  private SvgElement element() {
    SvgElement element = new SvgElement(in.getLocalName(), in.getLocation().getLineNumber());
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String name = in.getAttributeLocalName(i);
      // A drawing program's own id or style must not take the place of SVG's.
      if (in.getAttributeNamespace(i) == null || in.getAttributeNamespace(i).isEmpty()) {
        element.attributes.put(name, in.getAttributeValue(i));
      } else {
        element.attributes.putIfAbsent(name, in.getAttributeValue(i));
      }
    }
    return element;
  }

  static InputException refused(String file, int line, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(file, line));
  }
}
