package ellwand.app;

import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.pdf.Tiling;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How drawings are to become a style.
 *
 * @param asked what the drawings leave open
 * @param names what the user says of single pieces
 * @param dotsPerInch of drawings that do not say how large they are on paper
 * @param drawingUnit of the numbers in a DXF file, in place of what it says
 * @param styleName of the style; if absent, the drawing's title or the file's name
 * @param unit that the style is written in; if absent, that of the drawing
 * @param sizes to be read of those in a DXF file; none for all
 * @param tiling how the pages of a PDF are joined; if absent, each is read by itself
 * @param furniture whether frames, test squares and what every page of a PDF has are read, too
 */
public record ConvertRequest(
    Asked asked,
    PieceNames names,
    OptionalDouble dotsPerInch,
    Optional<Unit> drawingUnit,
    Optional<String> styleName,
    Optional<Unit> unit,
    List<String> sizes,
    Optional<Tiling> tiling,
    boolean furniture) {}
