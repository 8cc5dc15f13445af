package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.Stock;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.rule.FreePlace;
import ellwand.rule.Handling;
import ellwand.rule.WorstMatch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Works out the figures of one legal marker. */
final class Reckoning {

  private final Marker marker;
  private final Cloth cloth;

  Reckoning(Marker marker) {
    this.marker = marker;
    this.cloth = marker.lay().cloth();
  }

  Figures figures(List<String> cautions, List<FoldTried> foldsTried, Optional<Marker> shortest) {
    List<FreePlace> free = FreePlace.of(marker);
    Handling handling = Handling.of(marker, free);
    double clothLength = marker.clothLengthMm();
    double toBuy = Buying.lengthMm(cloth, clothLength);
    double wanted = marker.lay().wantedAreaMm2();
    return new Figures(
        lying(),
        new Figures.Widths(cloth.widthMm(), cloth.usableWidthMm(), WidthNeeded.mm(marker)),
        new Figures.Lengths(
            marker.lengthMm(), clothLength, cloth.endsMm(), cloth.shopStepMm(), toBuy),
        new Figures.Areas(
            clothLength == 0 ? 0 : marker.utilisation(),
            wanted,
            cloth.usableWidthMm() * clothLength - wanted),
        new Figures.Money(cloth.pricePerMetre(), Buying.cost(cloth, toBuy), cloth.currency()),
        new Figures.OnCloth(
            pieces(),
            names(c -> doubled(c) && (c.form() == Form.WHOLE || c.form() == Form.OPENED)),
            names(c -> foldedElsewhere() && !doubled(c)),
            free.stream().map(LeftOver::of).toList(),
            WorstMatch.of(marker)),
        whollyOpened() ? withReason(cautions) : cautions,
        foldsTried,
        handling,
        Served.of(marker, handling, shortest),
        marker.stoppedEarly());
  }

  private Figures.Lying lying() {
    return new Figures.Lying(
        cloth.name(),
        cloth.stock().map(Stock::name),
        whollyOpened() ? Fold.OPEN : marker.fold(),
        cloth.direction(),
        garments());
  }

  /** Whether a fold was wanted and yet nothing lies double. */
  private boolean whollyOpened() {
    return marker.fold() != Fold.OPEN
        && !marker.zones().isEmpty()
        && marker.zones().stream().allMatch(z -> z.plies() == 1);
  }

  private List<String> withReason(List<String> cautions) {
    List<String> all = new ArrayList<>(cautions);
    all.add(
        "Cloth "
            + cloth.name()
            + " lies open: none of its pieces can be cut from both plies of its "
            + marker.fold().words()
            + " at once.");
    return all;
  }

  private int garments() {
    record Garment(String size, int number) {}
    return (int)
        marker.lay().wanted().stream()
            .map(w -> new Garment(w.size(), w.garment()))
            .distinct()
            .count();
  }

  private List<PieceFigures> pieces() {
    record InSize(String piece, String size) {}
    Map<InSize, PieceFigures> pieces = new LinkedHashMap<>();
    for (Wanted w : marker.lay().wanted()) {
      double area = w.cut().cutting().area() * (w.how() == Cut.How.FOLD ? 2 : 1);
      pieces.merge(
          new InSize(w.cut().name(), w.size()),
          new PieceFigures(w.cut().name(), w.size(), w.how() == Cut.How.PAIR ? 2 : 1, area),
          (a, b) -> new PieceFigures(a.piece(), a.size(), a.count() + b.count(), a.areaMm2()));
    }
    return List.copyOf(pieces.values());
  }

  private boolean doubled(Copy copy) {
    return marker.zone(copy.zone()).plies() == 2;
  }

  private boolean foldedElsewhere() {
    return marker.zones().stream().anyMatch(z -> z.plies() == 2);
  }

  private List<CopyName> names(Predicate<Copy> which) {
    return marker.copies().stream()
        .filter(which)
        .map(c -> new CopyName(c.piece(), c.size(), c.garment()))
        .toList();
  }
}
