package ellwand.file.drawn;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a line is for, where a word at it says so. */
enum Role {
  SEWING("(sewing|seam|stitch|stitching)( ?lines?)?|sew"),
  CUTTING("cut|(cutting|cut) ?lines?"),
  FOLD("(cut |place )?(on )?(the )?fold ?(line|edge)?"),
  GRAIN("(straight )?(of )?grain( ?line)?( arrow)?"),
  /** Runs along the piece's own x axis, towards its top. */
  TOP("axis|top arrow"),
  NOTCH("(single |double )?notch(es)?( double| single)?"),
  /** Names a point of the outline. */
  POINT("points?"),
  /** A point of the outline that is there in every size. */
  TURN("turn points?"),
  /** Where the piece's own frame begins. */
  ORIGIN("origin"),
  INNER("inner( lines?)?|internal( lines?)?|inside|darts?|pleats?|drill holes?|cut ?outs?"),
  LEFT_OUT(
      "(grain|arrow) ?heads?|guide( ?lines?)?|guides"
          + "|frame|border|page|paper|text|labels?|notes?|ruler|legend");

  private final Pattern words;

  Role(String words) {
    this.words = Pattern.compile(words);
  }

  /** The role that a word names, if the word says nothing else. */
  static Optional<Role> of(String word) {
    String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ").strip();
    return Arrays.stream(values()).filter(r -> r.words.matcher(plain).matches()).findFirst();
  }
}
