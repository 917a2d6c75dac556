// On every page: themes, keys, sorting and narrowing of lists. Every page reads without it.
"use strict";
(function () {
  var themes = ["dark", "light", "red"];
  var root = document.documentElement;

  function kept() {
    try { return window.localStorage.getItem("noctuary-theme"); } catch (refused) { return null; }
  }
  function keep(theme) {
    try { window.localStorage.setItem("noctuary-theme", theme); } catch (refused) { /* works for this page */ }
  }
  function asked() {
    var found = /[?&]theme=(dark|light|red)\b/.exec(window.location.search);
    return found ? found[1] : null;
  }
  root.setAttribute("data-script", "on");
  var theme = asked() || kept();
  if (themes.indexOf(theme) >= 0) root.setAttribute("data-theme", theme);

  function choose(next) {
    root.setAttribute("data-theme", next);
    keep(next);
    var radio = document.getElementById("theme-" + next);
    if (radio) radio.checked = true;
  }
  function startThemes() {
    var now = root.getAttribute("data-theme");
    themes.forEach(function (name) {
      var radio = document.getElementById("theme-" + name);
      if (!radio) return;
      if (name === now) radio.checked = true;
      radio.addEventListener("change", function () { choose(name); });
    });
  }

  function cellText(row, column) { return row.cells[column].textContent.trim(); }
  function compare(kind, column, sign) {
    return function (a, b) {
      var x = cellText(a, column), y = cellText(b, column);
      var xGone = x === "" || x === "–", yGone = y === "" || y === "–";
      if (xGone || yGone) return xGone - yGone;
      var order = kind === "number" ? parseFloat(x.replace("−", "-")) - parseFloat(y.replace("−", "-"))
        : x.localeCompare(y, "en", { numeric: true });
      return sign * order;
    };
  }
  function sortBy(table, head) {
    var up = head.getAttribute("aria-sort") !== "ascending";
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (other) { other.removeAttribute("aria-sort"); });
    head.setAttribute("aria-sort", up ? "ascending" : "descending");
    var body = table.tBodies[0];
    var rows = Array.prototype.slice.call(body.rows);
    rows.sort(compare(head.dataset.sort, head.cellIndex, up ? 1 : -1));
    rows.forEach(function (row) { body.appendChild(row); });
  }
  function startSorting() {
    document.querySelectorAll("th[data-sort]").forEach(function (head) {
      var button = document.createElement("button");
      button.type = "button";
      button.textContent = head.textContent;
      head.textContent = "";
      head.appendChild(button);
      button.addEventListener("click", function () { sortBy(head.closest("table"), head); });
    });
  }

  function startNarrowing() {
    var box = document.getElementById("narrow");
    if (!box) return;
    var rows = Array.prototype.slice.call(document.getElementById(box.dataset.list).tBodies[0].rows);
    var selects = box.querySelectorAll("select");
    var bounds = box.querySelectorAll("input[data-bound]");
    var shown = box.querySelector(".shown");
    function fits(row) {
      var all = true;
      selects.forEach(function (select) {
        if (select.value === "") return;
        var values = select.dataset.key === "filters" ? row.dataset.filters.split("|") : [row.dataset[select.dataset.key]];
        if (values.indexOf(select.value) < 0) all = false;
      });
      bounds.forEach(function (input) {
        var bound = input.value.trim();
        if (bound === "") return;
        var night = row.dataset.night.slice(0, bound.length);
        if (night === "" || (input.dataset.bound === "from" ? night < bound : night > bound)) all = false;
      });
      return all;
    }
    function narrow() {
      var count = 0;
      rows.forEach(function (row) {
        row.hidden = !fits(row);
        if (!row.hidden) count += 1;
      });
      shown.textContent = count === rows.length ? "" : count + " of " + rows.length + " entries";
    }
    selects.forEach(function (select) { select.addEventListener("change", narrow); });
    bounds.forEach(function (input) { input.addEventListener("input", narrow); });
    document.getElementById("narrow-clear").addEventListener("click", function () {
      selects.forEach(function (select) { select.value = ""; });
      bounds.forEach(function (input) { input.value = ""; });
      narrow();
    });
    box.hidden = false;
    narrow();
  }

  function typing(target) {
    return /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName) && !/^(radio|checkbox)$/.test(target.type || "");
  }
  function startKeys() {
    document.addEventListener("keydown", function (event) {
      if (event.ctrlKey || event.altKey || event.metaKey || typing(event.target)) return;
      if (event.key === "s" || event.key === "S") {
        document.querySelectorAll(".switch").forEach(function (box) { box.checked = !box.checked; });
      } else if (event.key === "ArrowLeft" || event.key === "ArrowRight") {
        if (event.target.type === "radio" || event.target.closest(".scroll")) return;
        var link = document.querySelector(event.key === "ArrowLeft" ? "a[rel=prev]" : "a[rel=next]");
        if (link) link.click();
      }
    });
  }

  document.addEventListener("DOMContentLoaded", function () {
    startThemes();
    startSorting();
    startNarrowing();
    startKeys();
  });
})();
