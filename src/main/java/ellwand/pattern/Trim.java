package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a garment takes that is bought but not cut from cloth.
 *
 * @param sizes of the garments that take it; all where there are none
 * @param widthMm said beside it, if it has one
 */
public record Trim(
    String name, Need need, List<String> sizes, Optional<Double> widthMm, Price price) {

  /**
   * What it costs; nobody knows where the amount is 0.
   *
   * @param amount in the user's money, 0 or more
   * @param per for how much: mm of a length, or how many in a pack
   * @param currency a word or sign, may be empty
   */
  public record Price(double amount, double per, String currency) {

    public static final Price UNKNOWN = new Price(0, 1, "");

    public Price {
      if (!(amount >= 0 && per > 0)) {
        throw new IllegalArgumentException(amount + " for " + per + " is no price");
      }
    }

    public boolean known() {
      return amount > 0;
    }

    /** Of so much, in mm or pieces. */
    public double of(double much) {
      return much / per * amount;
    }
  }

  /** How much one garment takes. */
  public sealed interface Need {}

  /**
   * So many pieces.
   *
   * @param bySize how many, for each size that takes any
   * @param garments how many garments they do for, 1 or more: thread for several
   * @param each how long each of them is, where that is to be bought by: zips
   */
  public record Pieces(Map<String, Integer> bySize, int garments, Optional<Extent> each)
      implements Need {

    public Pieces {
      bySize = Collections.unmodifiableMap(new LinkedHashMap<>(bySize));
      if (garments < 1 || bySize.values().stream().anyMatch(n -> n < 0)) {
        throw InputException.of(
            "a garment takes less than none of it", "Write how many one garment takes");
      }
    }
  }

  /**
   * A length, cut off for each garment.
   *
   * @param of what it goes along, all edges together
   * @param share of that, above 0; below 1 for what is stretched: elastic
   * @param plusMm more, for what its ends need, 0 or more
   * @param stepMm it is sold in multiples of this, above 0
   */
  public record Lengths(Extent of, double share, double plusMm, double stepMm) implements Need {

    public Lengths {
      if (!(share > 0 && plusMm >= 0 && stepMm > 0)) {
        throw new IllegalArgumentException(share + ", " + plusMm + ", " + stepMm);
      }
    }
  }

  /**
   * What one garment takes.
   *
   * @param much mm of a length, or how many pieces; a part of one where it does for several
   *     garments
   * @param eachMm how long each piece is, if that is said
   */
  public record Amount(double much, Optional<Double> eachMm) {}

  public Trim {
    sizes = List.copyOf(sizes);
  }

  /** Whether it is bought by length and not in pieces. */
  public boolean byLength() {
    return need instanceof Lengths;
  }

  /** It is sold in multiples of this: mm, or a pack of so many. */
  public double step() {
    return need instanceof Lengths lengths ? lengths.stepMm : price.known() ? price.per : 1;
  }

  /**
   * What a garment of a size takes of it, nothing if that has none.
   *
   * @param pieces of that size, which may be measured
   * @throws InputException if an edge is not there, or nothing is said of the size
   */
  public Optional<Amount> amount(String size, PieceSet pieces) {
    if (!sizes.isEmpty() && !sizes.contains(size)) {
      return Optional.empty();
    }
    if (need instanceof Lengths lengths) {
      double along = lengths.of.mm(size, pieces);
      return Optional.of(new Amount(along * lengths.share + lengths.plusMm, Optional.empty()));
    }
    Pieces many = (Pieces) need;
    Integer count = many.bySize.get(size);
    if (count == null) {
      throw new InputException(
          Problem.of(
              "it is not said how many size " + size + " takes",
              "Give a number for each size, or name the sizes: that take it"));
    }
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new Amount(
                (double) count / many.garments, many.each.map(each -> each.mm(size, pieces))));
  }
}
