package ellwand.file.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.ValueNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** JSON as Ellwand writes it: indented, numbers to six decimals, no two runs differ. */
public final class Json {

  private static final int DECIMALS = 6;

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .defaultPrettyPrinter(
              new DefaultPrettyPrinter()
                  .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                  .withSeparators(
                      Separators.createDefaultInstance()
                          .withObjectFieldValueSpacing(Separators.Spacing.NONE)))
          .build();

  private Json() {}

  /** The bytes of a JSON file. */
  public static byte[] bytes(JsonNode value) {
    try {
      String text = MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(value) + "\n";
      return text.getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("nodes can always be written", e);
    }
  }

  /** An object to be filled. */
  public static ObjectNode object() {
    return NODES.objectNode();
  }

  /** A number to six decimals; null if it is not finite. */
  public static ValueNode number(double value) {
    return Double.isFinite(value) ? NODES.numberNode(rounded(value)) : NODES.nullNode();
  }

  private static BigDecimal rounded(double value) {
    BigDecimal plain =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  /** The word for a constant: {@code LOW_Y} is {@code low-y}. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
