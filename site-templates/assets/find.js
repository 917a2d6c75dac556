// The page on which things are found. Without this script it is a table of all entries and a list of all names.
"use strict";
(function () {
  var TYPING_MS = 120;

  function folded(text) { return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase(); }
  function all(root, what) { return Array.prototype.slice.call(root.querySelectorAll(what)); }

  /** A piece of the text around a word; empty when the text does not hold it. */
  function around(text, word) {
    var at = folded(text).indexOf(word);
    if (at < 0) return "";
    return (at > 60 ? "…" : "") + text.slice(Math.max(0, at - 60), at + 80) + (at + 80 < text.length ? "…" : "");
  }

  /** What is looked through: a row of the table or a line of the list, its words, and where a piece of its note goes. */
  function place(element, told) {
    var link = element.querySelector("a");
    var row = link && told[link.getAttribute("href")];
    return {
      element: element,
      head: element.tagName === "TR" ? element.querySelector("th") : element,
      note: row ? row[4] + " " + row[5] : "",
      words: folded(element.textContent + " " + (row ? row.join(" ") : ""))
    };
  }

  function Finder(form, rows) {
    var told = {};
    rows.forEach(function (row) { told[row[1]] = row; });
    var table = document.getElementById(form.dataset.list);
    var entries = table ? all(table.tBodies[0], "tr").map(function (tr) { return place(tr, told); }) : [];
    var names = all(document, ".names li").map(function (li) { return place(li, told); });
    var columns = table ? all(table.tHead, "th") : [];
    var box = document.getElementById("find-words");
    var selects = all(form, "select"), nights = all(form, "[data-night]"), bounds = all(form, "[data-bound]");
    var said = form.querySelector(".shown"), timer = 0;

    /** The number typed; a comma is a point too. NaN for what is no number. */
    function typed(input) { return input.value.trim() === "" ? null : Number(input.value.trim().replace(",", ".").replace("−", "-")); }
    function column(fact) { return columns.findIndex(function (head) { return head.dataset.fact === fact; }); }

    function fitsChoices(row) {
      return selects.every(function (select) {
        if (select.value === "") return true;
        return select.dataset.key === "filters" ? row.dataset.filters.split("|").indexOf(select.value) >= 0
          : row.dataset[select.dataset.key] === select.value;
      });
    }
    function fitsNights(row) {
      return nights.every(function (input) {
        var bound = input.value.trim(), night = row.dataset.night.slice(0, bound.length);
        if (bound === "") return true;
        return night !== "" && (input.dataset.night === "from" ? night >= bound : night <= bound);
      });
    }
    function fitsNumbers(row, asked) {
      return asked.every(function (bound) {
        var value = parseFloat(row.cells[bound.column].textContent.trim().replace("−", "-"));
        return bound.least ? value >= bound.number : value <= bound.number;
      });
    }
    function asked() {
      return bounds.filter(function (input) { return typed(input) !== null; }).map(function (input) {
        return { column: column(input.dataset.fact), least: input.dataset.bound === "least", number: typed(input) };
      });
    }

    /** Shows a place or hides it; with a piece of its note where that holds the first word. */
    function show(one, fits, word) {
      var old = one.head.querySelector(".piece");
      if (old) old.remove();
      one.element.hidden = !fits;
      var piece = fits && word ? around(one.note, word) : "";
      if (!piece) return;
      var line = document.createElement("p");
      line.className = "piece";
      line.textContent = piece;
      one.head.appendChild(line);
    }

    function find() {
      var words = folded(box.value).split(/\s+/).filter(Boolean);
      var numbers = asked(), facts = numbers.length > 0 || selects.concat(nights).some(function (f) { return f.value.trim() !== ""; });
      function holds(one) { return words.every(function (word) { return one.words.indexOf(word) >= 0; }); }
      var shown = 0, named = 0;
      entries.forEach(function (one) {
        var row = one.element, fits = holds(one) && fitsChoices(row) && fitsNights(row) && fitsNumbers(row, numbers);
        show(one, fits, words[0]);
        if (fits) shown += 1;
      });
      names.forEach(function (one) {
        var fits = !facts && holds(one);
        show(one, fits, words[0]);
        if (fits) named += 1;
      });
      all(document, ".names section").forEach(function (section) {
        section.hidden = !section.querySelector("li:not([hidden])");
      });
      tell(words.length > 0 || facts, shown, named);
    }

    function tell(narrowed, shown, named) {
      var odd = bounds.filter(function (input) { return Number.isNaN(typed(input)); });
      bounds.forEach(function (input) { input.setAttribute("aria-invalid", String(odd.indexOf(input) >= 0)); });
      said.textContent = odd.length > 0 ? "“" + odd[0].value.trim() + "” is no number; write one such as 2.5"
        : !narrowed ? "" : shown + " of " + entries.length + (entries.length === 1 ? " entry" : " entries")
          + (named > 0 ? " and " + named + (named === 1 ? " name" : " names") : "");
    }

    function soon() {
      window.clearTimeout(timer);
      timer = window.setTimeout(find, TYPING_MS);
    }
    function clear() {
      selects.concat(nights, bounds, [box]).forEach(function (field) { field.value = ""; });
      find();
      box.focus();
    }

    /** Arrows walk the results from the box on; Escape leads back to it. */
    function keys(event) {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      if (event.key === "Escape" && document.activeElement !== box) {
        box.focus();
        return;
      }
      var down = event.key === "ArrowDown";
      if (!down && event.key !== "ArrowUp") return;
      var stops = [box].concat(all(document, "#found tbody tr:not([hidden]) th a, .names section:not([hidden]) li:not([hidden]) > a"));
      var at = stops.indexOf(document.activeElement), next = stops[at + (down ? 1 : -1)];
      if (at < 0 || !next) return;
      event.preventDefault();
      next.focus();
    }

    [box].concat(nights, bounds).forEach(function (field) { field.addEventListener("input", soon); });
    selects.forEach(function (select) { select.addEventListener("change", find); });
    document.getElementById("find-clear").addEventListener("click", clear);
    document.addEventListener("keydown", keys);
    form.hidden = false;
    if ([box].concat(selects, nights, bounds).some(function (field) { return field.value !== ""; })) find();
  }

  document.addEventListener("DOMContentLoaded", function () {
    var form = document.getElementById("find");
    if (!form) return;
    var script = document.createElement("script");
    script.src = form.dataset.words;
    script.addEventListener("load", function () { Finder(form, window.noctuaryWords); });
    script.addEventListener("error", function () { Finder(form, []); });
    document.head.appendChild(script);
  });
})();
