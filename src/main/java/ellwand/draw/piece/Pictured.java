package ellwand.draw.piece;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.Reading;
import java.util.List;

/** What a drawing of pieces shows, in groups that each begin a page. */
interface Pictured {

  /** Heads every page. */
  String title();

  /** Names of the groups, in order. */
  List<String> groups();

  /** The group that takes most room. */
  String largest();

  /**
   * Whether every piece of a group has room by itself, without a word: lettering all at each scale
   * is slow.
   */
  boolean hasRoom(String group, Paper paper, double scale);

  /**
   * The pieces of a group.
   *
   * @param before how many pieces stand on the pages before
   */
  List<Standing> standing(String group, Reading reading, int before);

  /** What stands over them. */
  List<Block> head(String group, double width, Reading reading, double stated);
}
