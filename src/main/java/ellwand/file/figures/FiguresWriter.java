package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Wish;
import ellwand.figures.Figures;
import ellwand.figures.FoldTried;
import ellwand.figures.JobFigures;
import ellwand.figures.LeftOver;
import ellwand.figures.PieceFigures;
import ellwand.figures.Served;
import ellwand.file.source.Json;
import ellwand.rule.Handling;
import java.util.List;

/** Writes figures.json. */
public final class FiguresWriter {

  private FiguresWriter() {}

  /** What a job comes to, cloth by cloth; lengths in mm, areas in square mm. */
  public static byte[] bytes(JobFigures job) {
    ObjectNode root = Json.object();
    root.put("style", job.style());
    root.put("garments", job.garments());
    ArrayNode cloths = root.putArray("cloths");
    job.cloths().forEach(figures -> cloths.add(cloth(figures)));
    root.set("buy", BuyNames.of(job.buy()));
    root.set("totalCost", Json.number(job.totalCost()));
    root.set("costPerGarment", Json.number(job.costPerGarment()));
    root.put("currency", job.currency());
    words(root.putArray("cautions"), job.cautions());
    return Json.bytes(root);
  }

  private static ObjectNode cloth(Figures figures) {
    ObjectNode node = Json.object();
    lying(node, figures.lies());
    measures(node, figures.widths(), figures.lengths());
    node.set("utilisation", Json.number(figures.areas().utilisation()));
    node.set("wantedAreaMm2", Json.number(figures.areas().wantedMm2()));
    node.set("wasteAreaMm2", Json.number(figures.areas().wasteMm2()));
    node.set("pricePerMetre", Json.number(figures.money().pricePerMetre()));
    node.set("cost", Json.number(figures.money().cost()));
    node.put("currency", figures.money().currency());
    onCloth(node, figures.onCloth());
    words(node.putArray("cautions"), figures.cautions());
    ArrayNode folds = node.putArray("foldsTried");
    figures.foldsTried().forEach(tried -> folds.add(fold(tried)));
    node.set("handling", handling(figures.handling()));
    node.set("wishes", wishes(figures.wishes()));
    node.put("stoppedEarly", figures.stoppedEarly());
    return node;
  }

  private static void lying(ObjectNode node, Figures.Lying lies) {
    node.put("cloth", lies.cloth());
    node.put("remnant", lies.remnant().orElse(""));
    node.put("fold", lies.fold().words());
    node.put("direction", lies.direction().words());
    node.put("garments", lies.garments());
  }

  private static void measures(ObjectNode node, Figures.Widths widths, Figures.Lengths lengths) {
    node.set("clothWidthMm", Json.number(widths.clothMm()));
    node.set("usableWidthMm", Json.number(widths.usableMm()));
    node.set("widthNeededMm", Json.number(widths.neededMm()));
    node.set("markerLengthMm", Json.number(lengths.markerMm()));
    node.set("clothLengthMm", Json.number(lengths.clothMm()));
    node.set("endsMm", Json.number(lengths.endsMm()));
    node.set("shopStepMm", Json.number(lengths.shopStepMm()));
    node.set("lengthToBuyMm", Json.number(lengths.toBuyMm()));
  }

  private static void onCloth(ObjectNode node, Figures.OnCloth onCloth) {
    ArrayNode pieces = node.putArray("pieces");
    onCloth.pieces().forEach(piece -> pieces.add(piece(piece)));
    CopyNames.write(node.putArray("wastedTwins"), onCloth.wastedTwins());
    CopyNames.write(node.putArray("onOpenedStretch"), onCloth.single());
    ArrayNode leftOvers = node.putArray("leftOvers");
    onCloth.leftOvers().forEach(left -> leftOvers.add(leftOver(left)));
    onCloth.worstMatch().ifPresent(worst -> node.set("worstMatchMm", Json.number(worst.mm())));
  }

  private static ObjectNode piece(PieceFigures piece) {
    ObjectNode node = Json.object();
    node.put("piece", piece.piece());
    node.put("size", piece.size());
    node.put("count", piece.count());
    node.set("areaMm2", Json.number(piece.areaMm2()));
    return node;
  }

  private static ObjectNode leftOver(LeftOver left) {
    ObjectNode node = Json.object();
    node.put("zone", left.zone());
    node.put("plies", left.plies());
    node.set("xMm", Json.number(left.xMm()));
    node.set("yMm", Json.number(left.yMm()));
    node.set("lengthMm", Json.number(left.lengthMm()));
    node.set("widthMm", Json.number(left.widthMm()));
    return node;
  }

  private static ObjectNode fold(FoldTried tried) {
    ObjectNode node = Json.object();
    node.put("fold", tried.fold().words());
    node.set("lengthMm", Json.number(tried.lengthMm()));
    node.set("clothLengthMm", Json.number(tried.clothLengthMm()));
    node.set("toBuyMm", Json.number(tried.toBuyMm()));
    node.put("reason", tried.reason());
    if (!tried.longerBecause().isEmpty()) {
      node.put("longerBecause", tried.longerBecause());
    }
    return node;
  }

  private static ObjectNode handling(Handling handling) {
    ObjectNode node = Json.object();
    node.set("garmentSpreadMm", Json.number(handling.garmentSpreadMm()));
    node.set("largestLeftOverMm2", Json.number(handling.largestLeftOverMm2()));
    node.set("otherLeftOverMm2", Json.number(handling.otherLeftOverMm2()));
    node.put("straightCuts", handling.straightCuts());
    ArrayNode at = node.putArray("straightCutsAtMm");
    handling.straightCutsAtMm().forEach(mm -> at.add(Json.number(mm)));
    node.set("stretchMm", Json.number(handling.stretchMm()));
    node.put("smallPieces", handling.smallPieces());
    node.put("smallNearEnd", handling.smallNearEnd());
    node.set("smallTooNearMm", Json.number(handling.smallTooNearMm()));
    node.set("smallOffEndMm", Json.number(handling.smallOffEndMm()));
    return node;
  }

  private static ObjectNode wishes(Served served) {
    ObjectNode node = Json.object();
    words(node.putArray("asked"), served.asked().stream().map(Wish::words).toList());
    node.set("priceMm", Json.number(served.priceMm()));
    node.set("priceToBuyMm", Json.number(served.priceToBuyMm()));
    node.set("price", Json.number(served.price()));
    node.set("clothLengthWithoutMm", Json.number(served.clothLengthWithoutMm()));
    node.set("without", handling(served.without()));
    return node;
  }

  private static void words(ArrayNode into, List<String> words) {
    words.forEach(into::add);
  }
}
