package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.SvgWriter;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgWriterTest {

  @Test
  void everyCopyIsDrawnAsItWasChecked() throws Exception {
    for (Marker marker : List.of(Samples.jacket(), Samples.overalls())) {
      Document svg = parsed(svg(marker));
      List<List<Point>> drawn = new ArrayList<>();
      for (Element path : elements(svg, "path")) {
        if (path.getAttribute("class").startsWith("outline")) {
          drawn.add(points(path.getAttribute("d")));
        }
      }
      assertEquals(marker.copies().size(), drawn.size());
      for (Copy copy : marker.copies()) {
        List<Point> wanted = copy.outline().points();
        assertTrue(drawn.stream().anyMatch(d -> same(d, wanted)), copy.piece());
      }
    }
  }

  @Test
  void oneUserUnitIsOneMillimetre() throws Exception {
    Element root = parsed(svg(Samples.jacket())).getDocumentElement();
    String[] box = root.getAttribute("viewBox").split(" ");
    assertEquals(box[2] + "mm", root.getAttribute("width"));
    assertEquals(box[3] + "mm", root.getAttribute("height"));
  }

  @Test
  void idsAreUniqueAndCopiesHaveTitles() throws Exception {
    Document svg = parsed(svg(Samples.overalls()));
    Set<String> ids = new HashSet<>();
    int copies = 0;
    for (Element group : elements(svg, "g")) {
      String id = group.getAttribute("id");
      assertTrue(ids.add(id), id);
      if (id.startsWith("copy-")) {
        copies++;
        assertTrue(
            group.getFirstChild().getNextSibling().getTextContent().contains("size 104"), id);
      }
    }
    assertEquals(Samples.overalls().copies().size(), copies);
  }

  @Test
  void hostileNamesStayWords() throws Exception {
    Document svg = parsed(svg(Samples.hostile()));
    assertEquals(0, svg.getElementsByTagName("script").getLength());
    assertEquals(0, svg.getElementsByTagName("b").getLength());
    List<String> words = elements(svg, "text").stream().map(Element::getTextContent).toList();
    assertTrue(words.contains("1 " + Samples.TAGS));
    assertTrue(words.contains("2 " + Samples.LETTERS));
    assertTrue(words.contains("5 tab line bell"));
    String title = elements(svg, "title").stream().map(Element::getTextContent).toList().toString();
    assertTrue(title.contains(Samples.LONG), "the whole name is told to those who point at it");
  }

  @Test
  void numbersAreShort() {
    assertEquals("0", SvgWriter.number(-0.0001));
    assertEquals("12.5", SvgWriter.number(12.5));
    assertEquals("100", SvgWriter.number(100));
    assertEquals("-0.001", SvgWriter.number(-0.001));
  }

  private static byte[] svg(Marker marker) {
    return MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).svg();
  }

  private static Document parsed(byte[] svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    assertFalse(new String(svg, StandardCharsets.UTF_8).contains("<!DOCTYPE"));
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }

  private static List<Point> points(String data) {
    List<Point> points = new ArrayList<>();
    String[] numbers = data.replaceAll("[MLZ]", "").strip().split("\\s+");
    for (int i = 0; i < numbers.length; i += 2) {
      points.add(new Point(Double.parseDouble(numbers[i]), -Double.parseDouble(numbers[i + 1])));
    }
    return points;
  }

  private static boolean same(List<Point> a, List<Point> b) {
    return a.size() == b.size()
        && IntStream.range(0, a.size()).allMatch(i -> a.get(i).distance(b.get(i)) < 0.001);
  }
}
