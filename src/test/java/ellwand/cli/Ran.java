package ellwand.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.work.Stop;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import picocli.CommandLine;

/** A command as a user ran it, and what it wrote. */
record Ran(int code, String out, String err) {

  static final ObjectMapper JSON = new ObjectMapper();

  static Ran of(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
    CommandLine commands = Main.commandLine(Stop::new, out, err, words);
    int code = commands.execute(words);
    commands.getOut().flush();
    commands.getErr().flush();
    return new Ran(code, out.toString(), err.toString());
  }

  JsonNode json() throws IOException {
    return JSON.readTree(out);
  }

  static int sum(JsonNode counts) {
    return StreamSupport.stream(counts.spliterator(), false).mapToInt(JsonNode::asInt).sum();
  }

  /** The text of a whole PDF. */
  static String words(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
