package ellwand.lay;

import ellwand.cutting.CutPiece;
import ellwand.pattern.Cut;

/**
 * One piece that a garment needs from the cloth: one whole, one cut on the fold, or one pair.
 *
 * @param cut the piece as it is cut
 * @param size the garment's size
 * @param garment which garment of the lay, from 1
 */
public record Wanted(CutPiece cut, String size, int garment, Cut.How how) {}
