// Noctuary's only script. Every page reads without it.
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

  function folded(text) { return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase(); }
  function made(name, parent, text) {
    var element = document.createElement(name);
    if (text) element.textContent = text;
    parent.appendChild(element);
    return element;
  }
  function around(text, word) {
    var at = folded(text).indexOf(word);
    if (at < 0) return "";
    return (at > 60 ? "…" : "") + text.slice(Math.max(0, at - 60), at + 80) + (at + 80 < text.length ? "…" : "");
  }
  function startFinding() {
    var place = document.getElementById("seek");
    if (!place) return;
    var script = document.createElement("script");
    script.src = place.dataset.words;
    script.addEventListener("load", function () { seek(place, window.noctuaryWords); });
    document.head.appendChild(script);
  }
  function seek(place, rows) {
    place.setAttribute("role", "search");
    var label = made("label", place, "Words of names and notes ");
    var box = made("input", label);
    box.type = "search";
    var said = made("p", place);
    said.setAttribute("role", "status");
    var list = made("ul", place);
    list.className = "plain";
    var known = rows.map(function (row) { return folded(row.join(" ")); });
    box.addEventListener("input", function () {
      var words = folded(box.value).split(/\s+/).filter(Boolean);
      list.textContent = "";
      var found = words.length === 0 ? [] : rows.filter(function (row, i) {
        return words.every(function (word) { return known[i].indexOf(word) >= 0; });
      });
      found.slice(0, 50).forEach(function (row) {
        var item = made("li", list);
        made("a", item, row[0]).href = row[1];
        made("span", item, " " + row[2] + (row[3] ? " · " + row[3] : "")).className = "date";
        var piece = around(row[4], words[0]);
        if (piece) made("p", item, piece);
      });
      said.textContent = words.length === 0 ? "" : found.length === 0 ? "Nothing holds all of these words."
        : found.length + (found.length === 1 ? " place" : " places") + (found.length > 50 ? "; the first 50 are listed" : "");
    });
    place.addEventListener("keydown", function (event) {
      if (event.key !== "ArrowDown" && event.key !== "ArrowUp" && event.key !== "Escape") return;
      var stops = [box].concat(Array.prototype.slice.call(list.querySelectorAll("a")));
      var at = stops.indexOf(document.activeElement);
      var next = event.key === "Escape" ? 0 : at + (event.key === "ArrowDown" ? 1 : -1);
      if (stops[next]) { event.preventDefault(); stops[next].focus(); }
    });
  }

  document.addEventListener("DOMContentLoaded", function () {
    startFinding();
    startThemes();
    startSorting();
    startNarrowing();
    startKeys();
  });
})();
