package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** From photos as files to what they show on one plane. */
public final class Photos {

  /** Each takes up to 66 MB. */
  private static final int MOST_PHOTOS = 8;

  /** Corners that are farther off than that do not lie on one plane, mm. */
  private static final double WORST_CORNER_MM = 0.2;

  /** Unless it is only that they are measured no better, pixels. */
  private static final double UNSURE_CORNER_PX = 0.3;

  /** By how much neighbours are off together at least where a sheet does not lie as it should. */
  private static final double TOGETHER = 0.15;

  /** A paper that lifts more is told of, mm. */
  private static final double LIFT_TOLD_MM = 2;

  /** Paper is cut to within 2 mm, so less is not told apart from 100 %. */
  private static final double PRINTED_WITHIN = 0.012;

  private Photos() {}

  /** Whether a file is a picture that can be decoded, by its content. */
  public static boolean looksLike(byte[] bytes) {
    return PhotoFile.looksLike(bytes);
  }

  /**
   * Photos of one plane with reference sheets on it.
   *
   * @param files their names as the user gave them
   * @param bytes of each
   * @throws InputException if one is no picture, shows no sheet, or shows none that the others
   *     show; if sheets are not flat, were moved or not printed at 100 %
   */
  public static Straightened straighten(List<String> files, List<byte[]> bytes) {
    List<PhotoFile> photos = decoded(files, bytes);
    List<List<SeenSheet>> seen = sheets(photos);
    Survey survey = survey(photos, seen);
    List<View> views =
        IntStream.range(0, photos.size())
            .mapToObj(i -> view(photos.get(i), survey.mapping(i)))
            .toList();
    List<String> notes = new ArrayList<>();
    checkFlat(survey, photos, views, notes);
    checkPrinted(survey, photos, seen, notes);
    tellLenses(survey, photos, notes);
    List<Outline> papers = survey.sheets().stream().map(Photos::paper).toList();
    Box box = papers.stream().map(Outline::box).reduce(Box::union).orElseThrow();
    List<double[]> gains = new Whites(survey, photos, seen).gains();
    return new Straightened(
        Straightening.picture(views, gains, box), views, papers, List.of(), List.copyOf(notes));
  }

  private static View view(PhotoFile photo, Mapping mapping) {
    return new View(photo.file(), photo.picture(), mapping);
  }

  private static Outline paper(LaidSheet laid) {
    return Outline.of(laid.sheet().outline().points().stream().map(laid::onPlane).toList());
  }

  static List<PhotoFile> decoded(List<String> files, List<byte[]> bytes) {
    InputException.unless(
        files.size() <= MOST_PHOTOS,
        files.size() + " photos are more than the " + MOST_PHOTOS + " that are read together",
        "Take fewer of one piece, each of more of it");
    return IntStream.range(0, files.size())
        .mapToObj(i -> decoded(files.get(i), bytes.get(i)))
        .toList();
  }

  /** Those in each photo; at least one. */
  static List<List<SeenSheet>> sheets(List<PhotoFile> photos) {
    SheetFinder finder = new SheetFinder();
    return photos.stream().map(photo -> sheets(finder, photo)).toList();
  }

  private static PhotoFile decoded(String file, byte[] bytes) {
    return inFile(file, () -> PhotoFile.read(file, bytes));
  }

  private static List<SeenSheet> sheets(SheetFinder finder, PhotoFile photo) {
    List<SeenSheet> sheets = inFile(photo.file(), () -> finder.find(new Grey(photo.picture())));
    if (sheets.isEmpty()) {
      throw at(
          photo.file(),
          "no reference sheet can be measured in the photo",
          "Lay one whole in view, flat, in even light, and take the photo sharp and from no"
              + " farther than needed; print sheets for it first (--reference A4); of a flat"
              + " scan say its dots per inch instead (--dpi 300)");
    }
    return sheets;
  }

  private interface Reading<T> {
    T read();
  }

  /** Tells which file a problem is in. */
  private static <T> T inFile(String file, Reading<T> reading) {
    try {
      return reading.read();
    } catch (InputException e) {
      throw new InputException(e.problems().stream().map(p -> p.at(file, 0)).toList());
    }
  }

  private static InputException at(String file, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(file, 0));
  }

  static Survey survey(List<PhotoFile> photos, List<List<SeenSheet>> seen) {
    try {
      return Survey.of(photos, seen);
    } catch (RoughPlaces.NotJoined e) {
      throw at(
          e.photo().file(),
          "the photo shows no reference sheet that another photo of the piece shows",
          "Leave the sheets where they are, and take each photo with a sheet that is in the one"
              + " before");
    }
  }

  private static void checkFlat(
      Survey survey, List<PhotoFile> photos, List<View> views, List<String> notes) {
    for (int i = 0; i < photos.size(); i++) {
      for (LaidSheet sheet : survey.sheets()) {
        OptionalDouble off = survey.offPx(i, sheet.sheet());
        Point middle = sheet.onPlane(sheet.sheet().field().centre());
        if (off.isPresent()
            && off.getAsDouble() > UNSURE_CORNER_PX
            && off.getAsDouble() / views.get(i).pixelsPerMm(middle) > WORST_CORNER_MM) {
          throw notFlat(survey, i, photos.get(i), sheet, views.get(i).pixelsPerMm(middle));
        }
      }
    }
    for (LaidSheet sheet : survey.sheets()) {
      double lift = sheet.highest();
      if (lift > LIFT_TOLD_MM) {
        notes.add(
            String.format(
                Locale.ROOT,
                "%s seems to lift by %.0f mm from the table, which is reckoned with; flat it tells"
                    + " more.",
                sheet.sheet(),
                lift));
      }
    }
  }

  /** Or not to be measured: then its corners are off one this way and one that way. */
  private static InputException notFlat(
      Survey survey, int shot, PhotoFile photo, LaidSheet sheet, double perMm) {
    if (survey.offTogether(shot, sheet.sheet()) > TOGETHER) {
      return at(
          photo.file(),
          sheet.sheet() + " does not lie flat, or was moved between photos",
          "Fix its corners with tape, and take the photos without touching anything");
    }
    return at(
        photo.file(),
        String.format(
            Locale.ROOT,
            "the squares of %s are too small or too blurred to be measured, with %.1f pixels to the"
                + " mm",
            sheet.sheet(),
            perMm),
        "Hold the camera still and nearer, in more light; of a large piece take several photos");
  }

  private static void tellLenses(Survey survey, List<PhotoFile> photos, List<String> notes) {
    for (int i = 0; i < photos.size(); i++) {
      if (!survey.tellsLens(i)) {
        notes.add(
            photos.get(i).file()
                + ": the sheets take up too little of the photo to tell how its lens bends; a usual"
                + " one is taken, with the focal length "
                + (photos.get(i).focalShare().isPresent() ? "that the file says" : "of a telephone")
                + ", and places far from the sheets are in doubt.");
      }
    }
  }

  private static void checkPrinted(
      Survey survey, List<PhotoFile> photos, List<List<SeenSheet>> seen, List<String> notes) {
    boolean told = false;
    for (int i = 0; i < photos.size(); i++) {
      Grey grey = new Grey(photos.get(i).picture());
      for (SeenSheet sheet : seen.get(i)) {
        OptionalDouble at =
            new PaperEdge(grey, survey.camera(i), survey.laid(sheet.sheet())).printedAt();
        told |= at.isPresent();
        if (at.isPresent() && Math.abs(at.getAsDouble() - 1) > PRINTED_WITHIN) {
          throw at(
              photos.get(i).file(),
              String.format(
                  Locale.ROOT,
                  "%s was printed at about %.0f %%, as its squares and its paper's edge say",
                  sheet.sheet(),
                  at.getAsDouble() * 100),
              "Print it at 100 %, not fitted to the page, measure it, and leave its paper uncut");
        }
      }
    }
    notes.add(
        told
            ? "That the sheets were printed at 100 % is seen to a hundredth; measure the chequered"
                + " field, 175 x 245 mm, to be sure."
            : "Whether the sheets were printed at 100 % cannot be seen; measure the chequered"
                + " field, 175 x 245 mm.");
  }
}
