package ellwand.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InstanceFileTest {

  private static final String XML =
      """
      <?xml version="1.0"?>
      <nesting xmlns="urn:any">
        <problem>
          <boards><piece id="b"><component idPolygon="p0" type="0"/></piece></boards>
          <lot>
            <piece id="i" quantity="3">
              <orientation><enumeration angle="0"/><enumeration angle="180"/></orientation>
              <component idPolygon="p1" type="0"/>
            </piece>
          </lot>
        </problem>
        <polygons>
          <polygon id="p0"><lines>
            <segment x0="0" y0="0"/><segment x0="0" y0="40"/>
            <segment x0="90" y0="40"/><segment x0="90" y0="0"/>
          </lines></polygon>
          <polygon id="p1"><lines>
            <segment x0=" 0.0" y0="0"/><segment x0="0" y0="4"/><segment x0="6" y0="0"/>
          </lines></polygon>
        </polygons>
      </nesting>
      """;

  @TempDir Path directory;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(directory.resolve(name), text);
  }

  @Test
  void xmlOfAnyNamespaceIsReadTheBoardsSmallerSideBeingTheWidth() throws IOException {
    Instance instance = InstanceFile.read(file("three.xml", XML));
    assertEquals("three", instance.name());
    assertEquals(40, instance.width());
    assertEquals(3, instance.copies());
    assertEquals(36, instance.area());
    assertEquals(List.of(0.0, 180.0), instance.items().get(0).rotations());
  }

  @Test
  void documentTypesAreRefused() throws IOException {
    String hostile =
        XML.replace(
            "<nesting", "<!DOCTYPE nesting [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><nesting");
    IOException e =
        assertThrows(IOException.class, () -> InstanceFile.read(file("hostile.xml", hostile)));
    assertTrue(e.getMessage().contains("DOCTYPE"), e.getMessage());
  }

  @Test
  void brokenFilesAreNamedWithTheirFault() throws IOException {
    Path noBoard = file("a.xml", XML.replaceAll("<boards>.*</boards>", "<boards/>"));
    assertTrue(
        assertThrows(IOException.class, () -> InstanceFile.read(noBoard))
            .getMessage()
            .matches(".*a\\.xml: it has no board"));
    Path noLot = file("b.xml", XML.replaceAll("(?s)<lot>.*</lot>", ""));
    assertTrue(
        assertThrows(IOException.class, () -> InstanceFile.read(noLot))
            .getMessage()
            .matches(".*b\\.xml: 'problem' has no 'lot'"));
  }

  @Test
  void aDirectoryGivesItsInstancesInOrder() throws IOException {
    file("b.xml", XML);
    file("a.xml", XML);
    file("README.md", "");
    assertEquals(
        List.of(directory.resolve("a.xml"), directory.resolve("b.xml")),
        InstanceFile.in(directory));
  }
}
