package ellwand.file.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.file.source.Measures;
import ellwand.pattern.Allowance;
import ellwand.pattern.Band;
import ellwand.pattern.BandPlan;
import ellwand.pattern.Binding;
import ellwand.pattern.BindingPlan;
import ellwand.pattern.Computed;
import ellwand.pattern.Cut;
import ellwand.pattern.Extent;
import ellwand.pattern.Gathered;
import ellwand.pattern.GatheredPlan;
import ellwand.pattern.PleatedPlan;
import java.util.List;

/** Writes pieces that are computed, each with all that its entry says. */
record ComputedWriter(PieceWriter pieces, Measures measures) {

  ObjectNode computed(Computed piece) {
    if (piece instanceof GatheredPlan gathered) {
      return gathered(gathered);
    }
    if (piece instanceof PleatedPlan pleated) {
      return pleated(pleated);
    }
    return piece instanceof BandPlan band ? band(band) : binding((BindingPlan) piece);
  }

  private ObjectNode gathered(GatheredPlan plan) {
    ObjectNode node = pieces.head(plan.cuts(), plan.grain());
    seams(node, plan.seams(), plan.cuts());
    ObjectNode gathered = node.putObject("gathered");
    set(gathered, "from", plan.joined());
    if (plan.fullness().open()) {
      gathered.put(
          "fullness",
          TrimWriter.plain(plan.fullness().least())
              + " to "
              + TrimWriter.plain(plan.fullness().most()));
    } else {
      gathered.set("fullness", Json.number(plan.fullness().least()));
    }
    set(gathered, "length", plan.length());
    panels(gathered, plan.panels());
    pieces.noted(node, plan.notches(), List.of());
    return node;
  }

  private ObjectNode pleated(PleatedPlan plan) {
    ObjectNode node = pieces.head(plan.cuts(), plan.grain());
    seams(node, plan.seams(), plan.cuts());
    ObjectNode pleated = node.putObject("pleated");
    set(pleated, "from", plan.joined());
    pleated.put("kind", Json.word(plan.kind()));
    plan.pleats().ifPresent(n -> pleated.put("pleats", n));
    plan.depthMm().ifPresent(mm -> pleated.set("depth", measures.number(mm)));
    plan.fullness().ifPresent(f -> pleated.set("fullness", Json.number(f)));
    set(pleated, "length", plan.length());
    panels(pleated, plan.panels());
    pieces.noted(node, plan.notches(), List.of());
    return node;
  }

  private ObjectNode band(BandPlan plan) {
    ObjectNode node = pieces.head(plan.cuts(), plan.grain());
    allowance(node, plan.seams().ends(), plan.cuts());
    ObjectNode edges = node.putObject("edges");
    allowance(edges.putObject(Band.JOINED), plan.seams().joined(), plan.cuts());
    allowance(edges.putObject(Band.FAR), plan.seams().far(), plan.cuts());
    ObjectNode band = node.putObject("band");
    set(band, "from", plan.joined());
    if (plan.share() != 1) {
      band.set("share", Json.number(plan.share()));
    }
    if (plan.overlapMm() > 0) {
      band.set("overlap", measures.number(plan.overlapMm()));
    }
    set(band, "height", plan.height());
    if (plan.doubled()) {
      band.put("doubled", true);
    }
    pieces.noted(node, plan.notches(), List.of());
    return node;
  }

  private ObjectNode binding(BindingPlan plan) {
    ObjectNode node = Json.object();
    node.set("cut", PieceWriter.cut(plan.cuts()));
    // It has none of its own, but an entry must say so.
    node.put("allowance", 0);
    ObjectNode binding = node.putObject("binding");
    set(binding, "from", plan.length());
    binding.set("width", measures.number(plan.widthMm()));
    if (plan.cutAs() == Binding.CutAs.SQUARE) {
      binding.put("cut-as", "square");
    }
    binding.set("longest", measures.number(plan.longestMm()));
    binding.set("join", measures.number(plan.joinMm()));
    return node;
  }

  private void seams(ObjectNode node, Gathered.Seams seams, List<Cut> cuts) {
    allowance(node, seams.side(), cuts);
    ObjectNode edges = node.putObject("edges");
    allowance(edges.putObject(Gathered.TOP), seams.top(), cuts);
    ObjectNode hem = edges.putObject(Gathered.HEM);
    allowance(hem, seams.hem(), cuts);
    if (seams.hemTurnedBack()) {
      hem.put("turned-back", true);
    }
  }

  private void allowance(ObjectNode node, Allowance allowance, List<Cut> cuts) {
    node.set("allowance", pieces.allowance(allowance, cuts));
  }

  private void set(ObjectNode node, String key, Extent extent) {
    node.set(key, new TrimWriter(measures).extent(extent));
  }

  private static void panels(ObjectNode node, int panels) {
    if (panels > 0) {
      node.put("panels", panels);
    }
  }
}
