package noctuary.serve;

import java.nio.charset.StandardCharsets;

/**
 * How an open page learns that it changed: a script of the site's own origin that answers only once there is something
 * new. Nothing else would pass the pages' content policy, which allows scripts of their origin and no connections.
 */
final class Reload {
    static final String START = "/-/watch.js";
    static final String WAIT = "/-/wait.js";
    static final String AGAIN = "window.location.reload();\n";

    private Reload() {}

    /** The page with the script before the end of its body. */
    static byte[] into(byte[] page, long edition) {
        String html = new String(page, StandardCharsets.UTF_8);
        int end = html.lastIndexOf("</body>");
        if (end < 0) {
            return page;
        }
        String script = "<script src=\"" + START + "\" data-seen=\"" + edition + "\"></script>\n";
        return (html.substring(0, end) + script + html.substring(end)).getBytes(StandardCharsets.UTF_8);
    }

    /** The edition that a waiting page shows; -1 when the query does not say. */
    static long seen(String query) {
        if (query == null || !query.matches("seen=\\d{1,15}")) {
            return -1;
        }
        return Long.parseLong(query.substring("seen=".length()));
    }

    static String script() {
        return """
                (function () {
                  "use strict";
                  var seen = document.currentScript.getAttribute("data-seen");
                  function ask() {
                    var question = document.createElement("script");
                    question.src = "/-/wait.js?seen=" + seen;
                    question.onload = function () { question.remove(); window.setTimeout(ask, 100); };
                    question.onerror = function () { question.remove(); window.setTimeout(ask, 2000); };
                    document.head.appendChild(question);
                  }
                  window.addEventListener("load", function () { window.setTimeout(ask, 100); });
                }());
                """;
    }
}
