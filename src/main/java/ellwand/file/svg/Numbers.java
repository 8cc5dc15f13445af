package ellwand.file.svg;

import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;

/** Reads numbers and letters from the text of an attribute, as SVG writes them. */
final class Numbers {

  private final String text;
  private int at;

  Numbers(String text) {
    this.text = text;
  }

  /** All numbers of a list. */
  static List<Double> list(String text) {
    Numbers in = new Numbers(text);
    List<Double> numbers = new ArrayList<>();
    while (!in.ended()) {
      numbers.add(in.number());
    }
    return numbers;
  }

  /** Whether nothing but space is left. */
  boolean ended() {
    skip();
    return at >= text.length();
  }

  /** Whether a number is next. */
  boolean atNumber() {
    skip();
    return at < text.length() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
  }

  /** The next sign that is no space or comma. */
  char letter() {
    skip();
    return text.charAt(at++);
  }

  private void skip() {
    while (at < text.length() && (text.charAt(at) == ',' || text.charAt(at) <= ' ')) {
      at++;
    }
  }

  /** A flag of an arc, which needs no space after it. */
  boolean flag() {
    skip();
    if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
      return text.charAt(at++) == '1';
    }
    throw unreadable();
  }

  double number() {
    skip();
    int from = at;
    if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
      at++;
    }
    digits();
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
      digits();
    }
    if (at > from && at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      exponent();
    }
    try {
      double value = Double.parseDouble(text.substring(from, at));
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Told below, as is a number beyond all numbers.
    }
    at = from;
    throw unreadable();
  }

  /** The only number of the text. */
  double only() {
    double number = number();
    if (!ended()) {
      throw unreadable();
    }
    return number;
  }

  /** Not that of {@code 2em}. */
  private void exponent() {
    int before = at++;
    if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
      at++;
    }
    int digits = at;
    digits();
    if (at == digits) {
      at = before;
    }
  }

  private void digits() {
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
  }

  InputException unreadable() {
    String rest = text.substring(Math.min(at, text.length()));
    String shown = rest.length() > 20 ? rest.substring(0, 20) + "..." : rest;
    return InputException.of(
        shown.isEmpty()
            ? "a number is missing at its end"
            : "a number is expected at '" + shown + "'",
        "Save the drawing again, or leave the line out");
  }
}
