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
    Path noWidth = file("b.json", "{\"items\":[]}");
    assertTrue(
        assertThrows(IOException.class, () -> InstanceFile.read(noWidth))
            .getMessage()
            .contains("'strip_height' is missing"));
  }

  @Test
  void jsonIsRead() throws IOException {
    Instance instance =
        InstanceFile.read(
            file(
                "x.json",
                """
                {"name": "two", "strip_height": 10, "items": [
                  {"demand": 2, "allowed_orientations": [0, 90],
                   "shape": {"type": "simple_polygon", "data": [[0,0],[0,3],[5,3],[5,0],[0,0]]}}]}
                """));
    assertEquals("two", instance.name());
    assertEquals(30, instance.area());
    assertEquals(4, instance.items().get(0).outline().points().size());
    assertEquals(List.of(0.0, 90.0), instance.items().get(0).rotations());
  }

  @Test
  void aDirectoryGivesItsInstancesInOrder() throws IOException {
    file("b.xml", XML);
    file("a.json", "{}");
    file("README.md", "");
    assertEquals(
        List.of(directory.resolve("a.json"), directory.resolve("b.xml")),
        InstanceFile.in(directory));
  }
}
