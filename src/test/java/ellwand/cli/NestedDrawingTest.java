package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Stop;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import picocli.CommandLine;

/** All sizes of each piece on one another, told apart without colour. */
class NestedDrawingTest {

  @TempDir private Path folder;

  @Test
  void everyPieceHasALineOfItsOwnForEachSize() throws Exception {
    Path out = folder.resolve("sizes.svg");
    CommandLine commands = Main.commandLine(Stop::new);
    commands.setErr(new PrintWriter(new StringWriter()));
    int code =
        commands.execute(
            "draw", "sample-markers/beck-tunic/job.yaml", "--nested", "--out", out.toString());
    assertEquals(0, code);
    Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(out.toFile());
    List<Element> pieces = ofClass(svg.getDocumentElement(), "piece");
    assertEquals(5, pieces.size());
    for (Element piece : pieces) {
      List<Element> lines = ofClass(piece, "cutting-line");
      assertEquals(9, lines.size());
      Set<String> dashes = new HashSet<>();
      lines.forEach(l -> dashes.add(path(l).getAttribute("stroke-dasharray")));
      assertEquals(9, dashes.size(), "each size is dashed otherwise");
    }
    // Half the front: 16.5 cm at the chest in 92 and 21 cm in 140, so the lines lie apart.
    List<Element> front = ofClass(pieces.get(0), "cutting-line");
    Set<String> lines = new HashSet<>();
    front.forEach(l -> lines.add(path(l).getAttribute("d")));
    assertEquals(9, lines.size());
    List<String> names =
        ofClass(pieces.get(0), "size-name").stream().map(e -> e.getTextContent().strip()).toList();
    assertTrue(
        names.containsAll(List.of("92", "98", "104", "110", "116", "122", "140")), "" + names);
  }

  private static Element path(Element line) {
    return line.getTagName().equals("path")
        ? line
        : (Element) line.getElementsByTagName("path").item(0);
  }

  private static List<Element> ofClass(Element root, String name) {
    List<Element> found = new ArrayList<>();
    var all = root.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.getAttribute("class").equals(name)) {
        found.add(element);
      }
    }
    return found;
  }
}
