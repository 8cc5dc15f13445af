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
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Locale;

/** JSON as Ellwand writes it: indented, numbers to six decimals, no two runs differ. */
public final class Json {

  private static final int DECIMALS = 6;

  private static final double MILLION = 1e6;

  /**
   * So far every whole number is a double, and products of doubles are off by far less than a
   * quarter.
   */
  private static final double EXACT = 1L << 48;

  private static final double PLAINLY = 0.25;

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
      byte[] text = MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(value);
      byte[] bytes = Arrays.copyOf(text, text.length + 1);
      bytes[text.length] = '\n';
      return bytes;
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("nodes can always be written", e);
    }
  }

  /**
   * What such bytes say.
   *
   * @throws IllegalArgumentException if they are no JSON
   */
  public static JsonNode read(byte[] bytes) {
    try {
      return MAPPER.readTree(bytes);
    } catch (IOException e) {
      throw new IllegalArgumentException("this is no JSON", e);
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
    double millionths = value * MILLION;
    double near = Math.rint(millionths);
    // What is plainly nearer to one number than to the next needs no decimal arithmetic.
    return Math.abs(near) < EXACT && Math.abs(millionths - near) < PLAINLY
        ? shortest((long) near)
        : roundedExactly(value);
  }

  private static BigDecimal shortest(long millionths) {
    long digits = millionths;
    int decimals = DECIMALS;
    while (decimals > 0 && digits % 10 == 0) {
      digits /= 10;
      decimals--;
    }
    return BigDecimal.valueOf(digits, decimals);
  }

  /** The same for every number, some ten times slower. */
  static BigDecimal roundedExactly(double value) {
    BigDecimal plain =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  /** The word for a constant: {@code LOW_Y} is {@code low-y}. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
