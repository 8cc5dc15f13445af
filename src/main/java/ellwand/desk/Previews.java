package ellwand.desk;

import ellwand.app.PagePictures;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** What was looked at last, since who turns the pages of a print asks for each of them. */
final class Previews {

  private static final int MOST = 4;

  private final Map<Object, PagePictures> made =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, PagePictures> eldest) {
          return size() > MOST;
        }
      };

  /**
   * The pages of a PDF, made if it is not known.
   *
   * @param of all that it depends on
   */
  synchronized PagePictures of(Object of, Supplier<byte[]> pdf) {
    PagePictures known = made.get(of);
    if (known == null) {
      known = new PagePictures(pdf.get());
      made.put(of, known);
    }
    return known;
  }
}
