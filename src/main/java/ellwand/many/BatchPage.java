package ellwand.many;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;

/** The index of a batch as a page: every job with its result, its picture and its files. */
final class BatchPage {

  private static final String HEAD =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width">
      <title>Batch</title>
      <style>
      body { font: 16px/1.5 sans-serif; margin: 1.5em; color: #222; background: #fff }
      table { border-collapse: collapse; width: 100% }
      th, td { text-align: left; vertical-align: top; padding: .5em .8em; border-top: 1px solid #999 }
      td.time { text-align: right; white-space: nowrap }
      img { max-width: 16em; max-height: 7em; display: block }
      code { font-size: .9em }
      </style>
      </head>
      <body>
      """;

  private BatchPage() {}

  static byte[] html(BatchIndex index) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("<h1>%d jobs</h1>\n<p>".formatted(index.entries().size()));
    for (BatchEntry.State state : BatchEntry.State.values()) {
      long count = index.count(state);
      if (count > 0) {
        page.append(count).append(' ').append(words(state)).append(".\n");
      }
    }
    page.append(
        "</p>\n<table>\n<tr><th>Job</th><th>Result</th><th>Marker</th><th>Time</th></tr>\n");
    index.entries().forEach(entry -> row(entry, page));
    return page.append("</table>\n</body>\n</html>\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String words(BatchEntry.State state) {
    return switch (state) {
      case DONE -> "done";
      case NO -> "with the answer no";
      case REFUSED -> "refused";
      case BROKEN -> "failed by a bug in Ellwand or for want of memory";
      case LEFT -> "still to do";
    };
  }

  private static void row(BatchEntry entry, StringBuilder page) {
    String name = escaped(entry.name());
    page.append("<tr><td>");
    page.append(entry.files().isEmpty() ? name : link(entry.name() + "/", name));
    page.append("<br><code>").append(escaped(entry.asked())).append("</code></td>\n<td>");
    if (entry.state() != BatchEntry.State.DONE) {
      page.append("<strong>").append(words(entry.state())).append("</strong><br>");
    }
    page.append(escaped(entry.said()).replace("\n", "<br>")).append("<br>");
    for (String file : entry.files()) {
      if (file.endsWith(".pdf")) {
        page.append(link(entry.name() + "/" + file, escaped(file))).append(' ');
      }
    }
    page.append("</td>\n<td>");
    for (String file : entry.files()) {
      if (file.endsWith(".png")
          || file.endsWith(".svg") && !entry.files().contains(file.replace(".svg", ".png"))) {
        String picture = "<img loading=\"lazy\" alt=\"" + escaped(file) + "\" src=\"";
        page.append(picture).append(address(entry.name() + "/" + file)).append("\">");
      }
    }
    page.append("</td>\n<td class=\"time\">");
    page.append(entry.made() ? Math.round(entry.seconds()) + " s" : "");
    page.append("</td></tr>\n");
  }

  private static String link(String to, String words) {
    return "<a href=\"" + address(to) + "\">" + words + "</a>";
  }

  /** Seen from the page; names may hold what is no address. */
  private static String address(String path) {
    try {
      return escaped(new URI(null, null, "./" + path, null).toASCIIString());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("a path can always be quoted", e);
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
