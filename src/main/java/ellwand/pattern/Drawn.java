package ellwand.pattern;

/**
 * A piece that is drawn point by point and moves between sizes by grade rules.
 *
 * @param draft in the base size
 */
public record Drawn(Draft draft) implements Drafting {

  @Override
  public String name() {
    return draft.name();
  }

  @Override
  public Draft in(SizeDrafts drafts) {
    return drafts.sizes().graded(draft, drafts.size());
  }
}
