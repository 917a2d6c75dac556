// Drawings of stars: the one pointed at, or walked to with the arrow keys, tells its numbers.
"use strict";
(function () {
  function centre(point) {
    var round = point.querySelector("circle");
    if (round) return { x: round.cx.baseVal.value, y: round.cy.baseVal.value };
    var box = point.getBBox();
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  function start(svg) {
    var figure = svg.closest("figure");
    var said = figure ? figure.querySelector(".readout") : null;
    var points = Array.prototype.slice.call(svg.querySelectorAll("g.point"));
    if (!said || points.length === 0) return;
    var hint = said.textContent, here = points[0];

    function tell(point) { said.textContent = point ? point.getAttribute("aria-label") : hint; }
    function stand(point) {
      here.setAttribute("tabindex", "-1");
      here = point;
      here.setAttribute("tabindex", "0");
      here.focus();
    }
    /** The nearest one in a direction: distance along it, and twice the distance aside. */
    function beside(dx, dy) {
      var from = centre(here), best = null, least = Infinity;
      points.forEach(function (point) {
        var at = centre(point), ahead = (at.x - from.x) * dx + (at.y - from.y) * dy;
        var aside = Math.abs((at.x - from.x) * dy) + Math.abs((at.y - from.y) * dx);
        if (point !== here && ahead > 0.01 && ahead + 2 * aside < least) {
          least = ahead + 2 * aside;
          best = point;
        }
      });
      return best;
    }

    svg.setAttribute("role", "group");
    points.forEach(function (point, i) {
      var title = point.querySelector("title");
      point.setAttribute("role", "img");
      point.setAttribute("aria-label", title ? title.textContent : "");
      point.setAttribute("tabindex", i === 0 ? "0" : "-1");
      if (title) title.remove();
      point.addEventListener("pointerenter", function () { tell(point); });
      point.addEventListener("pointerleave", function () { tell(document.activeElement === here ? here : null); });
      point.addEventListener("focus", function () { tell(point); });
      point.addEventListener("blur", function () { tell(null); });
      point.addEventListener("click", function () { stand(point); });
    });
    svg.addEventListener("keydown", function (event) {
      var ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
      var next = ways[event.key] ? beside(ways[event.key][0], ways[event.key][1]) || here
        : event.key === "Home" ? points[0] : event.key === "End" ? points[points.length - 1] : null;
      if (!next) return;
      event.preventDefault();
      event.stopPropagation();
      stand(next);
    });
  }

  document.addEventListener("DOMContentLoaded", function () {
    document.querySelectorAll("svg.whiskers, svg.overlay, svg.zones").forEach(start);
  });
})();
