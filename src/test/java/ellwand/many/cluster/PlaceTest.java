package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlaceTest {

  @Test
  void namesAndAddressesAreRead() {
    assertEquals(new Place("127.0.0.1", 5), Place.of("127.0.0.1:5", 17355));
    assertEquals(new Place("10.0.0.7", 17355), Place.of("10.0.0.7", 17355));
    assertEquals("[0:0:0:0:0:0:0:1]:7", Place.of("[::1]:7", 17355).toString());
    assertTrue(Place.of("localhost", 1).onlyHere());
  }

  @Test
  void whatIsNoPlaceIsRefused() {
    for (String text : new String[] {"", "a:b", "10.0.0.7:99999", ":80", "a b c"}) {
      assertThrows(InputException.class, () -> Place.of(text, 1), text);
    }
  }

  /** RFC 6761, 6.4: nobody ever has a name that ends so. */
  @Test
  void namesThatNobodyHasAreNotFound() {
    assertEquals(Optional.empty(), Place.known("cellar.invalid", 1));
    assertThrows(InputException.class, () -> Place.of("cellar.invalid", 1));
  }

  @Test
  void aMachineFacesItselfAtItsOwnAddress() {
    assertEquals("127.0.0.1", Place.facing(Place.here(1)).host());
  }

  @Test
  void withoutKeysNobodyComesInFromOutside() {
    Place outside = new Place("192.0.2.1", 17355);
    InputException e =
        assertThrows(InputException.class, () -> new Door(outside, Optional.empty()));
    assertTrue(e.getMessage().contains("--make-keys"), e::getMessage);
    assertEquals(outside, new Door(outside, Optional.of(Path.of("table.p12"))).at());
  }
}
