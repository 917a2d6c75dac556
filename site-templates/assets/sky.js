// The same sky, side by side: two attempts under a seam that moves, or one after the other, and a loupe over both.
"use strict";
(function () {
  /** A full turn of blinking takes twice this: far slower than the three flashes a second of WCAG 2.3.1. */
  var BLINK_MS = 900;
  var still = window.matchMedia ? window.matchMedia("(prefers-reduced-motion: reduce)") : { matches: false };
  var count = 0;

  function make(tag, className, text) {
    var element = document.createElement(tag);
    if (className) element.className = className;
    if (text) element.textContent = text;
    return element;
  }
  function labelled(text, control, className) {
    var label = make("label", className);
    label.appendChild(make("span", "", text));
    label.appendChild(control);
    return label;
  }

  /** The attempts, as the list tells of them. */
  function read(list) {
    return Array.prototype.map.call(list.querySelectorAll("li"), function (item) {
      var links = item.querySelectorAll("a"), own = links[links.length - 1];
      return { name: item.dataset.name, alone: item.hasAttribute("data-alone"), alike: links[0], own: own };
    });
  }

  function Desk(home, desk) {
    var two = home.querySelector(".sky-two");
    var sides = Array.prototype.slice.call(two.querySelectorAll(".sky-side"));
    var attempts = read(home.querySelector(".sky-list"));
    var chosen = [0, attempts.length - 1], light = "alike", timer = 0, second = false, id = "sky-" + (count += 1);
    var whole = Noctuary.spec(attempts[0].alike);
    var at = { x: whole.width / 2, y: whole.height / 2 }, times = 1;

    var seam = make("input", "seam-rule");
    var line = make("div", "seam");
    var loupe = make("button", "loupe-mark");
    var panes = [], names = [], selects = [];
    var blink = make("button", "blink", "Show in turn");
    var shown = make("p", "sky-now");
    var where = make("output", "loupe-where");

    function link(side) { return attempts[chosen[side]][light]; }
    function dress(side) {
      var img = sides[side].querySelector("img"), from = link(side);
      if (img.getAttribute("srcset") !== from.dataset.srcset) {
        img.setAttribute("srcset", from.dataset.srcset);
        img.src = from.dataset.deep;
        img.alt = from.dataset.alt;
      }
      var attempt = attempts[chosen[side]];
      names[side].textContent = attempt.name + (attempt.alone && light === "alike" ? " (finished, in its own stretch)" : "");
      panes[side].take(Noctuary.spec(from));
    }
    function dressBoth() { dress(0); dress(1); tellBlink(); loupeDraw(); }

    // The seam
    function seamAt(share) {
      sides[1].style.clipPath = "inset(0 0 0 " + share * 100 + "%)";
      line.style.left = share * 100 + "%";
    }
    function seamMoved() {
      stop();
      seamAt(seam.value / 1000);
      seam.setAttribute("aria-valuetext", Math.round(seam.value / 10) + " % from the left");
    }
    function drag(element, move) {
      element.addEventListener("pointerdown", function (event) {
        event.preventDefault();
        element.setPointerCapture(event.pointerId);
        element.addEventListener("pointermove", move);
      });
      ["pointerup", "pointercancel"].forEach(function (name) {
        element.addEventListener(name, function () { element.removeEventListener("pointermove", move); });
      });
    }
    function share(event) {
      var box = two.getBoundingClientRect();
      return { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
    }

    // Blinking
    function blinking() { return two.classList.contains("blinking"); }
    function tellBlink() {
      shown.textContent = blinking() ? "Now: " + attempts[chosen[second ? 1 : 0]].name : "";
    }
    function turn() {
      second = !second;
      sides[1].style.visibility = second ? "visible" : "hidden";
      tellBlink();
    }
    function stop() {
      if (!blinking()) return;
      window.clearInterval(timer);
      timer = 0;
      two.classList.remove("blinking");
      blink.setAttribute("aria-pressed", "false");
      blink.textContent = "Show in turn";
      sides[1].style.visibility = "";
      seamAt(seam.value / 1000);
      tellBlink();
    }
    function begin() {
      two.classList.add("blinking");
      sides[1].style.clipPath = "none";
      blink.setAttribute("aria-pressed", "true");
      second = true;
      turn();
      if (!still.matches) {
        blink.textContent = "Stop";
        timer = window.setInterval(turn, BLINK_MS);
      } else {
        blink.textContent = "The other one";
      }
    }
    function blinkPressed() {
      if (!blinking()) begin(); else if (still.matches) turn(); else stop();
    }

    // The loupe
    function seen(side) {
      var box = panes[side].box;
      return { width: box.clientWidth / times, height: box.clientHeight / times };
    }
    function loupeDraw() {
      var view = seen(0);
      at.x = Math.max(0, Math.min(whole.width, at.x));
      at.y = Math.max(0, Math.min(whole.height, at.y));
      panes.forEach(function (pane) { pane.show(times, at.x - view.width / 2, at.y - view.height / 2); });
      loupe.style.left = at.x / whole.width * 100 + "%";
      loupe.style.top = at.y / whole.height * 100 + "%";
      loupe.style.width = Math.min(1, view.width / whole.width) * 100 + "%";
      loupe.style.height = Math.min(1, view.height / whole.height) * 100 + "%";
      where.textContent = "x " + Math.round(at.x) + ", y " + Math.round(at.y) + " of " + whole.width + " × " + whole.height + " px";
    }
    function loupeKeys(event) {
      var ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }, way = ways[event.key];
      if (!way || event.ctrlKey || event.altKey || event.metaKey) return;
      var step = event.shiftKey ? 1 : Math.max(8, Math.round(whole.width / 60));
      event.preventDefault();
      event.stopPropagation();
      at.x += way[0] * step;
      at.y += way[1] * step;
      loupeDraw();
    }
    function loupeTo(event) {
      var place = share(event);
      at.x = place.x * whole.width;
      at.y = place.y * whole.height;
      loupeDraw();
    }

    // Building, while the page is being read, so that nothing moves afterwards
    function chooser(side, text) {
      var select = make("select");
      attempts.forEach(function (attempt, i) {
        var option = make("option", "", attempt.name);
        option.value = i;
        select.appendChild(option);
      });
      select.value = chosen[side];
      select.addEventListener("change", function () { chosen[side] = +select.value; dressBoth(); });
      selects[side] = select;
      return labelled(text, select, "sky-choice");
    }
    function radios(title, name, options, chosenValue, act) {
      var set = make("fieldset", "sky-set");
      set.appendChild(make("legend", "", title));
      options.forEach(function (option) {
        var input = make("input"), label = make("label");
        input.type = "radio";
        input.name = id + name;
        input.value = option[0];
        input.checked = String(option[0]) === String(chosenValue);
        input.addEventListener("change", function () { act(option[0]); });
        label.appendChild(input);
        label.appendChild(document.createTextNode(" " + option[1]));
        set.appendChild(label);
      });
      return set;
    }
    function loupePane(side) {
      var figure = make("figure", "loupe-pane"), box = make("div", "loupe-glass"), name = make("figcaption");
      figure.appendChild(box);
      figure.appendChild(name);
      panes[side] = new Noctuary.Pane(box);
      panes[side].box = box;
      names[side] = name;
      return figure;
    }
    function build() {
      var bar = make("div", "sky-bar"), glasses = make("div", "loupe"), loupeBar = make("div", "sky-bar");
      seam.type = "range";
      seam.min = 0;
      seam.max = 1000;
      seam.step = 10;
      seam.value = 500;
      seam.setAttribute("aria-label", "Seam between the two pictures");
      home.querySelector(".sky-foot").appendChild(seam);
      bar.appendChild(chooser(0, "Left of the seam"));
      bar.appendChild(chooser(1, "Right of the seam"));
      if (attempts.some(function (attempt) { return !attempt.alone; })) {
        bar.appendChild(radios("Stretch", "light", [["alike", "one for all"], ["own", "each its own"]], light, function (next) {
          light = next;
          dressBoth();
        }));
      }
      blink.type = "button";
      blink.setAttribute("aria-pressed", "false");
      bar.appendChild(blink);
      bar.appendChild(shown);
      desk.appendChild(bar);
      glasses.appendChild(loupePane(0));
      glasses.appendChild(loupePane(1));
      desk.appendChild(glasses);
      times = whole.width > 1800 ? 1 : 2;
      loupeBar.appendChild(radios("Loupe", "loupe", [[1, "1:1"], [2, "2:1"], [4, "4:1"]], times, function (next) {
        times = next;
        loupeDraw();
      }));
      loupeBar.appendChild(where);
      desk.appendChild(loupeBar);
      line.setAttribute("aria-hidden", "true");
      loupe.type = "button";
      loupe.setAttribute("aria-label", "Loupe: the arrow keys move it, with Shift by one pixel");
      two.appendChild(line);
      two.appendChild(loupe);
    }

    build();
    seam.addEventListener("input", seamMoved);
    drag(line, function (event) {
      seam.value = Math.max(0, Math.min(1, share(event).x)) * 1000;
      seamMoved();
    });
    drag(loupe, loupeTo);
    sides.forEach(function (side) { side.addEventListener("click", loupeTo); });
    loupe.addEventListener("keydown", loupeKeys);
    blink.addEventListener("click", blinkPressed);
    home.addEventListener("keydown", function (event) {
      if (event.key === "Escape") stop();
    });
    document.addEventListener("visibilitychange", function () { if (document.hidden && !still.matches) stop(); });
    window.addEventListener("resize", loupeDraw);
    window.addEventListener("load", loupeDraw);
    seamAt(0.5);
    dressBoth();
  }

  // An element of our own is made the moment the page's text comes to it, before anything is painted.
  if (window.customElements) {
    window.customElements.define("sky-desk", class extends HTMLElement {
      connectedCallback() {
        if (!this.firstChild) new Desk(this.closest(".sky"), this);
      }
    });
  }
})();
