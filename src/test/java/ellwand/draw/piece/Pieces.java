package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import java.util.List;

/** The pieces of a child's jacket, for the drawings to show. */
public final class Pieces {

  private Pieces() {}

  public static CutPiece back() {
    return Drafting.of("Back", 0, 0)
        .fold("centre back", 470, 0)
        .curve("neck", 10, 472, 30, 478, 45, 490, 58)
        .line("shoulder", 15, 465, 150)
        .curve("armhole", 10, 420, 138, 380, 140, 345, 190)
        .line("side seam", 15, 0, 205)
        .line("hem", 30, 0, 0)
        .notch("armhole", 70, 2)
        .notch("side seam", 170, 1)
        .cut("main", "1 on fold");
  }

  public static CutPiece front() {
    return Drafting.of("Front", 0, 0)
        .line("front edge", 15, 415, 0)
        .curve("neck", 10, 418, 40, 440, 55, 488, 62)
        .line("shoulder", 15, 462, 155)
        .curve("armhole", 10, 415, 130, 385, 140, 345, 195)
        .line("side seam", 15, 0, 210)
        .line("hem", 30, 0, 0)
        .notch("armhole", 75, 1)
        .notch("side seam", 170, 1)
        .inner("pocket place", 60, 60, 60, 170)
        .cut("main", "pair");
  }

  public static CutPiece sleeve() {
    return Drafting.of("Sleeve", 0, 0)
        .line("front underarm", 15, 270, -35)
        .curve("front cap", 10, 330, 10, 380, 40, 385, 120)
        .curve("back cap", 10, 385, 190, 330, 250, 270, 275)
        .line("back underarm", 15, 0, 240)
        .line("wrist", 30, 0, 0)
        .notch("front cap", 60, 1)
        .notch("back cap", 90, 2)
        .cut("main", "pair");
  }

  public static CutPiece collar() {
    return Drafting.of("Collar", 0, 0)
        .fold("centre back", 75, 0)
        .curve("outer edge", 10, 75, 60, 75, 110, 90, 175)
        .line("front edge", 10, 12, 160)
        .curve("neck", 10, 2, 100, 0, 50, 0, 0)
        .cut("main", "2 on fold");
  }

  public static CutPiece pocket() {
    return Drafting.rectangle("Pocket", 130, 110, 10).cut("main", "2");
  }

  public static CutPiece facing() {
    return Drafting.rectangle("Front facing", 430, 50, 10).cut("main", "pair");
  }

  public static CutPiece loop() {
    return Drafting.rectangle("Hanger loop", 90, 12, 0).cut("main", "1");
  }

  public static List<CutPiece> all() {
    return List.of(back(), front(), sleeve(), collar(), facing(), pocket(), loop());
  }
}
