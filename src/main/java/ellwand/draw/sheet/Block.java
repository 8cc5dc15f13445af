package ellwand.draw.sheet;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A part of a page that is filled from the top down. */
public interface Block {

  double heightMm();

  /** What it shows when its upper left corner is at a place. */
  List<Item> items(Point upperLeft);

  /** Blocks under one another. */
  public record Stack(List<Block> blocks, double gapMm) implements Block {

    public Stack {
      blocks = blocks.stream().filter(b -> b.heightMm() > 0).toList();
    }

    @Override
    public double heightMm() {
      return blocks.stream().mapToDouble(Block::heightMm).sum()
          + gapMm * Math.max(0, blocks.size() - 1);
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>();
      Point at = upperLeft;
      for (Block block : blocks) {
        items.addAll(block.items(at));
        at = new Point(at.x(), at.y() - block.heightMm() - gapMm);
      }
      return items;
    }
  }

  /** Two blocks side by side. */
  record Beside(Block left, Block right, double offsetMm) implements Block {

    @Override
    public double heightMm() {
      return Math.max(left.heightMm(), right.heightMm());
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>(left.items(upperLeft));
      items.addAll(right.items(upperLeft.plus(new Point(offsetMm, 0))));
      return items;
    }
  }
}
