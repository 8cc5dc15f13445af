package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The outlined pieces of a design in one size, each made when it is first asked for. */
public final class Making implements Others {

  private final Design design;
  private final String size;
  private final Map<String, Workpiece> made = new HashMap<>();

  /**
   * @throws InputException if the design has no such size
   */
  Making(Design design, String size) {
    this.design = design;
    this.size = size;
    if (!design.sizes().names().contains(size)) {
      throw new InputException(
          Problem.of(
              "style " + design.name() + " has no size " + size,
              "Use sizes out of " + String.join(", ", design.sizes().names())));
    }
  }

  @Override
  public Workpiece piece(String name) {
    Workpiece known = made.get(name);
    if (known != null) {
      return known;
    }
    Outlined piece =
        design.outlined().stream()
            .filter(p -> p.name().equals(name))
            .findFirst()
            .orElseThrow(() -> MadeFrom.none(name, design.outlined()));
    try {
      Workpiece work = piece.started(size, design.sizes(), this);
      for (Step step : piece.alter()) {
        work = step.on(work, this);
      }
      Workpiece finished = piece.finish().on(work);
      made.put(name, finished);
      return finished;
    } catch (InputException e) {
      throw Design.in(name, e);
    }
  }

  /**
   * A piece as it was before it was altered, and after each of its steps.
   *
   * @throws InputException if it cannot be made
   */
  public List<Workpiece> stages(Outlined piece) {
    List<Workpiece> stages = new ArrayList<>();
    stages.add(piece.started(size, design.sizes(), this));
    for (Step step : piece.alter()) {
      stages.add(step.on(stages.get(stages.size() - 1), this));
    }
    return stages;
  }

  /**
   * A piece as it is cut, with the marks that it and the matches speak of.
   *
   * @throws InputException with every problem found, each with its piece
   */
  public Piece finished(Outlined piece) {
    try {
      Workpiece work = piece(piece.name());
      List<Mark> marks = asked(piece, work);
      return work.made(piece.finish().cuts(), new Asks(piece.value(), piece.place(), marks));
    } catch (InputException e) {
      throw Design.in(piece.name(), e);
    }
  }

  private List<Mark> asked(Outlined piece, Workpiece work) {
    Map<String, Optional<Match>> asked = new LinkedHashMap<>();
    piece.place().ifPresent(place -> asked.put(place.mark(), Optional.empty()));
    for (Match match : design.matches()) {
      if (match.piece().equals(piece.name())) {
        asked.putIfAbsent(match.mark(), Optional.of(match));
      }
      if (match.otherPiece().equals(piece.name())) {
        asked.putIfAbsent(match.otherMark(), Optional.of(match));
      }
    }
    List<Mark> marks = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    asked.forEach(
        (words, match) -> {
          try {
            marks.add(Mark.of(words, design.unit(), work));
          } catch (InputException e) {
            e.problems().forEach(p -> problems.add(match.map(m -> m.located(p)).orElse(p)));
          }
        });
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return marks;
  }
}
