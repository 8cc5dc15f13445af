package ellwand.desk;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;

/**
 * Lets in only who was given the address: every request carries the key, first in the address, then
 * in a cookie that other sites' pages cannot send, and names this machine as it is called in the
 * address, so that a page elsewhere cannot pass for it.
 */
final class Guard {

  private static final String COOKIE = "ellwand";

  /** Nothing but what the desk itself serves, no script in the page, no frame round it. */
  private static final String CONTENT_POLICY =
      "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none';"
          + " form-action 'self'; frame-ancestors 'none'";

  private final String key;
  private final Set<String> hosts;

  /**
   * @param hosts as the address may name this machine, with the port
   */
  Guard(Set<String> hosts) {
    byte[] bytes = new byte[16];
    new SecureRandom().nextBytes(bytes);
    this.key = HexFormat.of().formatHex(bytes);
    this.hosts = hosts;
  }

  String key() {
    return key;
  }

  /**
   * Refuses who has no key or comes from elsewhere. The first address brings the key, which goes
   * into the cookie and out of sight.
   */
  void admit(Context request) {
    secure(request);
    String host = request.header("Host");
    String origin = request.header("Origin");
    if (host == null || !hosts.contains(host)) {
      throw new ForbiddenResponse("This page is not called so here.");
    }
    if (origin != null && !origin.equals("http://" + host)) {
      throw new ForbiddenResponse("Another site's page has no business here.");
    }
    String site = request.header("Sec-Fetch-Site");
    boolean first = request.method() == HandlerType.GET && request.path().equals("/");
    if (site != null && !first && !site.equals("same-origin") && !site.equals("none")) {
      throw new ForbiddenResponse("Another site's page has no business here.");
    }
    if (first && same(request.queryParam("key"))) {
      request.cookie(new Cookie(COOKIE, key, "/", -1, false, true, null, SameSite.STRICT));
      request.redirect("/");
      request.skipRemainingHandlers();
      return;
    }
    if (!same(request.cookie(COOKIE))) {
      throw new ForbiddenResponse(
          "Open the desk with the address that it printed when it was started.");
    }
  }

  private boolean same(String given) {
    return given != null
        && MessageDigest.isEqual(
            given.getBytes(StandardCharsets.UTF_8), key.getBytes(StandardCharsets.UTF_8));
  }

  private static void secure(Context request) {
    request.header("Content-Security-Policy", CONTENT_POLICY);
    request.header("X-Content-Type-Options", "nosniff");
    request.header("Referrer-Policy", "no-referrer");
    request.header("Cross-Origin-Resource-Policy", "same-origin");
    request.header("Cross-Origin-Opener-Policy", "same-origin");
    request.header("Cache-Control", "no-store");
  }
}
