package ellwand.trace;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How well a camera measures: each sheet in turn is left out, then measured in the photos as if it
 * were a piece, and held against what is printed on it.
 *
 * @param findings one for each sheet and photo of it
 */
public record CameraCheck(List<Finding> findings) {

  /**
   * A sheet as measured by the others: the rectangle of its field's inner corners.
   *
   * @param sheet which one
   * @param file the photo
   * @param widthMm measured, of {@link #WIDTH_MM}
   * @param heightMm measured, of {@link #HEIGHT_MM}
   * @param offMm how far the farthest corner is off when all are laid on one another
   * @param expectedMm how far off {@link Mapping#errorMm} said that one may be
   */
  public record Finding(
      String sheet,
      String file,
      double widthMm,
      double heightMm,
      double offMm,
      double expectedMm) {}

  /** Of the rectangle on every sheet. */
  public static final double WIDTH_MM = (ReferenceSheet.COLUMNS - 2) * ReferenceSheet.SQUARE_MM;

  public static final double HEIGHT_MM = (ReferenceSheet.ROWS - 2) * ReferenceSheet.SQUARE_MM;

  public CameraCheck {
    findings = List.copyOf(findings);
  }

  /**
   * Of photos that show two sheets or more.
   *
   * @throws InputException if none does, and as {@link Photos#straighten}
   */
  public static CameraCheck of(List<String> files, List<byte[]> bytes) {
    List<PhotoFile> photos = Photos.decoded(files, bytes);
    List<List<SeenSheet>> seen = Photos.sheets(photos);
    List<ReferenceSheet> sheets =
        seen.stream().flatMap(List::stream).map(SeenSheet::sheet).distinct().toList();
    List<Finding> findings = new ArrayList<>();
    for (ReferenceSheet sheet : sheets) {
      findings.addAll(leftOut(sheet, photos, seen));
    }
    InputException.unless(
        !findings.isEmpty(),
        "no sheet can be measured by another one",
        "Take a photo with two reference sheets of different numbers in it, one of them where a"
            + " piece would lie");
    return new CameraCheck(findings);
  }

  private static List<Finding> leftOut(
      ReferenceSheet sheet, List<PhotoFile> photos, List<List<SeenSheet>> seen) {
    List<PhotoFile> kept = new ArrayList<>();
    List<List<SeenSheet>> others = new ArrayList<>();
    List<SeenSheet> measured = new ArrayList<>();
    for (int i = 0; i < photos.size(); i++) {
      List<SeenSheet> left = seen.get(i).stream().filter(s -> !s.sheet().equals(sheet)).toList();
      if (!left.isEmpty() && left.size() < seen.get(i).size()) {
        kept.add(photos.get(i));
        others.add(left);
        measured.add(
            seen.get(i).stream().filter(s -> s.sheet().equals(sheet)).findFirst().orElseThrow());
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      // Each photo by itself, as a single one of a piece would be.
      Survey survey = Photos.survey(List.of(kept.get(i)), List.of(others.get(i)));
      Finding finding = finding(measured.get(i), kept.get(i), survey.mapping(0));
      // One that is partly covered has no sides to measure.
      if (Double.isFinite(finding.widthMm + finding.heightMm)) {
        findings.add(finding);
      }
    }
    return findings;
  }

  private static Finding finding(SeenSheet seen, PhotoFile photo, CameraMapping mapping) {
    LaidSheet laid = RoughPlaces.laidAs(seen, mapping.camera());
    List<Point> all = seen.sheet().corners();
    double off = 0;
    double expected = 0;
    double[] sides = new double[4];
    for (Map.Entry<Integer, Point> corner : seen.corners().entrySet()) {
      Point paper = all.get(corner.getKey());
      Point mm = mapping.mmAt(corner.getValue());
      double now = mm.distance(laid.onPlane(paper));
      if (now >= off) {
        off = now;
        expected = mapping.errorMm(mm);
      }
      for (Map.Entry<Integer, Point> other : seen.corners().entrySet()) {
        Point way = all.get(other.getKey()).minus(paper);
        double length = mapping.mmAt(other.getValue()).distance(mm);
        if (way.x() == WIDTH_MM && way.y() == 0) {
          sides[0] += length;
          sides[1]++;
        } else if (way.x() == 0 && way.y() == HEIGHT_MM) {
          sides[2] += length;
          sides[3]++;
        }
      }
    }
    return new Finding(
        seen.sheet().toString(),
        photo.file(),
        sides[0] / sides[1],
        sides[2] / sides[3],
        off,
        expected);
  }
}
