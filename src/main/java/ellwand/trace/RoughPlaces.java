package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where photos were taken from and sheets lie, about, each photo by the sheets that were placed
 * before: what a {@link Survey} begins with. The sheet that most corners were seen of lies at the
 * origin, not turned.
 */
final class RoughPlaces {

  /** Of telephones, 26 mm on 35 mm film (common practice): a share of the diagonal. */
  private static final double USUAL_FOCAL = 26 / Math.hypot(24, 36);

  private final List<PhotoFile> photos;
  private final List<List<SeenSheet>> seen;
  private final Camera[] cameras;
  private final Map<ReferenceSheet, LaidSheet> laid = new LinkedHashMap<>();

  private RoughPlaces(List<PhotoFile> photos, List<List<SeenSheet>> seen) {
    this.photos = photos;
    this.seen = seen;
    cameras = new Camera[photos.size()];
  }

  /** A photo shows no sheet that those before it show. */
  static final class NotJoined extends Exception {
    private final transient PhotoFile photo;

    NotJoined(PhotoFile photo) {
      super(photo.file());
      this.photo = photo;
    }

    PhotoFile photo() {
      return photo;
    }
  }

  /**
   * Of photos that each show a sheet.
   *
   * @throws NotJoined if the photos have no sheets in common
   */
  static RoughPlaces of(List<PhotoFile> photos, List<List<SeenSheet>> seen) throws NotJoined {
    RoughPlaces places = new RoughPlaces(photos, seen);
    places.begin();
    boolean found = true;
    while (found) {
      found = false;
      for (int i = 0; i < places.cameras.length; i++) {
        if (places.cameras[i] == null && places.place(i)) {
          found = true;
        }
      }
    }
    int lost = Arrays.asList(places.cameras).indexOf(null);
    if (lost >= 0) {
      throw new NotJoined(photos.get(lost));
    }
    return places;
  }

  private void begin() {
    Map<ReferenceSheet, Integer> corners = new LinkedHashMap<>();
    seen.forEach(
        sheets -> sheets.forEach(s -> corners.merge(s.sheet(), s.corners().size(), Integer::sum)));
    ReferenceSheet first =
        Collections.max(corners.entrySet(), Map.Entry.comparingByValue()).getKey();
    laid.put(first, LaidSheet.flat(first, 0, 0, 0));
  }

  /** Places a photo by the sheets that are known, then the others in it. */
  private boolean place(int i) {
    List<Point> mm = new ArrayList<>();
    List<Point> pixels = new ArrayList<>();
    for (SeenSheet sheet : seen.get(i)) {
      LaidSheet known = laid.get(sheet.sheet());
      if (known != null) {
        List<Point> all = sheet.sheet().corners();
        sheet
            .corners()
            .forEach(
                (corner, pixel) -> {
                  mm.add(known.onPlane(all.get(corner)));
                  pixels.add(pixel);
                });
      }
    }
    if (mm.isEmpty()) {
      return false;
    }
    PhotoFile photo = photos.get(i);
    int width = photo.picture().getWidth();
    int height = photo.picture().getHeight();
    double focal = Math.hypot(width, height) * photo.focalShare().orElse(USUAL_FOCAL);
    cameras[i] =
        Camera.of(Homography.between(mm, pixels), focal, (width - 1) / 2.0, (height - 1) / 2.0);
    for (SeenSheet sheet : seen.get(i)) {
      laid.computeIfAbsent(sheet.sheet(), s -> laidAs(sheet, cameras[i]));
    }
    return true;
  }

  /** Where a sheet lies that a camera sees, taken to be flat: as near to its corners as can be. */
  static LaidSheet laidAs(SeenSheet seen, Camera camera) {
    List<Point> all = seen.sheet().corners();
    List<Point> paper = seen.corners().keySet().stream().map(all::get).toList();
    List<Point> mm = seen.corners().values().stream().map(camera::mmAt).toList();
    Motion to = Motion.onto(paper, mm);
    return LaidSheet.flat(seen.sheet(), to.x(), to.y(), Math.toRadians(to.turnDegrees()));
  }

  /** Of each photo. */
  Camera[] cameras() {
    return cameras.clone();
  }

  /** Of each sheet, the first at the origin. */
  List<LaidSheet> laid() {
    return List.copyOf(laid.values());
  }
}
