// A picture looked at closely: tiles fetched as they come into view, and a viewer for one picture.
"use strict";
var Noctuary = window.Noctuary || {};
(function () {
  /** What a link with data-deep says of its picture. */
  function spec(link) {
    var d = link.dataset;
    return { src: d.deep, width: +d.width, height: +d.height, tiles: d.tiles || "", side: +d.side || 0, levels: +d.levels || 1 };
  }

  function place(element, left, top, width, height) {
    element.style.transform = "translate(" + left + "px," + top + "px)";
    element.style.width = width + "px";
    element.style.height = height + "px";
  }

  /** Draws a picture into a box: show(scale, x, y) puts pixel (x, y) at its top left corner, scale CSS pixels a pixel. */
  function Pane(box) {
    var ground = document.createElement("img");
    var tiles = {}, now = null;
    ground.alt = "";
    ground.decoding = "async";
    box.appendChild(ground);

    function clear() {
      Object.keys(tiles).forEach(function (key) { tiles[key].remove(); });
      tiles = {};
    }
    function level(scale) {
      var finer = Math.floor(Math.log2(1 / (scale * (window.devicePixelRatio || 1))) + 0.01);
      return Math.max(0, Math.min(now.levels - 1, finer));
    }
    function tile(key, address) {
      if (!tiles[key]) {
        var img = document.createElement("img");
        img.alt = "";
        img.src = address;
        box.appendChild(img);
        tiles[key] = img;
      }
      return tiles[key];
    }
    function drawTiles(scale, x, y) {
      var l = level(scale), times = Math.pow(2, l), step = now.side * times, seen = {};
      var wide = Math.ceil(now.width / times), high = Math.ceil(now.height / times);
      var lastColumn = Math.min(Math.ceil(wide / now.side) - 1, Math.floor((x + box.clientWidth / scale) / step));
      var lastRow = Math.min(Math.ceil(high / now.side) - 1, Math.floor((y + box.clientHeight / scale) / step));
      for (var row = Math.max(0, Math.floor(y / step)); row <= lastRow; row += 1) {
        for (var column = Math.max(0, Math.floor(x / step)); column <= lastColumn; column += 1) {
          var key = l + "/" + column + "_" + row;
          var img = tile(key, now.tiles + "/" + key + ".jpg");
          seen[key] = true;
          place(img, (column * step - x) * scale, (row * step - y) * scale,
            Math.min(now.side, wide - column * now.side) * times * scale,
            Math.min(now.side, high - row * now.side) * times * scale);
        }
      }
      Object.keys(tiles).forEach(function (key) {
        if (!seen[key]) { tiles[key].remove(); delete tiles[key]; }
      });
    }
    this.take = function (picture) {
      if (now && now.src === picture.src) return;
      now = picture;
      clear();
      ground.src = now.src;
    };
    this.show = function (scale, x, y) {
      if (!now) return;
      place(ground, -x * scale, -y * scale, now.width * scale, now.height * scale);
      box.classList.toggle("coarse", scale > 2);
      if (now.tiles) drawTiles(scale, x, y);
    };
  }

  /** The viewer: one dialog, made when it is first wanted. */
  function Viewer() {
    var dialog = document.createElement("dialog");
    var stage = document.createElement("div");
    var bar = document.createElement("div");
    var said = document.createElement("output");
    var pane, picture, scale = 1, x = 0, y = 0, touching = {}, gap = 0, opener = null;

    function fitting() { return Math.min(stage.clientWidth / picture.width, stage.clientHeight / picture.height); }
    function draw() {
      var seenX = stage.clientWidth / scale, seenY = stage.clientHeight / scale;
      x = seenX >= picture.width ? (picture.width - seenX) / 2 : Math.max(0, Math.min(picture.width - seenX, x));
      y = seenY >= picture.height ? (picture.height - seenY) / 2 : Math.max(0, Math.min(picture.height - seenY, y));
      pane.show(scale, x, y);
      said.textContent = Math.round(scale * 100) + " %";
    }
    /** Changes the scale so that the point at (px, py) of the stage stays where it is. */
    function zoom(next, px, py) {
      next = Math.max(Math.min(fitting(), 1), Math.min(8, next));
      x += px / scale - px / next;
      y += py / scale - py / next;
      scale = next;
      draw();
    }
    function middle(next) { zoom(next, stage.clientWidth / 2, stage.clientHeight / 2); }
    function whole() { scale = fitting(); draw(); }
    function pan(dx, dy) { x += dx / scale; y += dy / scale; draw(); }

    function button(text, key, act) {
      var made = document.createElement("button");
      made.type = "button";
      made.textContent = text;
      made.title = "Key: " + key;
      made.addEventListener("click", act);
      bar.appendChild(made);
      return made;
    }
    function keys(event) {
      var step = Math.max(60, stage.clientWidth / 8), acts = {
        ArrowLeft: function () { pan(-step, 0); }, ArrowRight: function () { pan(step, 0); },
        ArrowUp: function () { pan(0, -step); }, ArrowDown: function () { pan(0, step); },
        "+": function () { middle(scale * 1.5); }, "=": function () { middle(scale * 1.5); },
        "-": function () { middle(scale / 1.5); }, "0": whole, "1": function () { middle(1); }
      };
      event.stopPropagation();
      if (event.ctrlKey || event.altKey || event.metaKey || !acts[event.key]) return;
      event.preventDefault();
      acts[event.key]();
    }
    function points() { return Object.keys(touching).map(function (id) { return touching[id]; }); }
    function spread(two) { return Math.hypot(two[0].x - two[1].x, two[0].y - two[1].y); }
    function moved(event) {
      var before = touching[event.pointerId], box = stage.getBoundingClientRect();
      if (!before) return;
      var all = points(), share = all.length;
      pan((before.x - event.clientX) / share, (before.y - event.clientY) / share);
      touching[event.pointerId] = { x: event.clientX, y: event.clientY };
      if (share === 2) {
        var two = points(), apart = spread(two);
        if (gap > 0) zoom(scale * apart / gap, (two[0].x + two[1].x) / 2 - box.left, (two[0].y + two[1].y) / 2 - box.top);
        gap = apart;
      }
    }
    function lifted(event) { delete touching[event.pointerId]; gap = 0; }

    dialog.className = "closely";
    stage.className = "closely-stage";
    bar.className = "closely-bar";
    button("Closer", "+", function () { middle(scale * 1.5); });
    button("Farther", "−", function () { middle(scale / 1.5); });
    button("Whole", "0", whole);
    button("1:1", "1", function () { middle(1); });
    bar.appendChild(said);
    button("Close", "Esc", function () { dialog.close(); });
    dialog.appendChild(bar);
    dialog.appendChild(stage);
    document.body.appendChild(dialog);
    pane = new Pane(stage);
    dialog.addEventListener("keydown", keys);
    dialog.addEventListener("close", function () { if (opener) opener.focus(); });
    stage.addEventListener("wheel", function (event) {
      var box = stage.getBoundingClientRect();
      event.preventDefault();
      zoom(scale * Math.exp(-event.deltaY / 400), event.clientX - box.left, event.clientY - box.top);
    }, { passive: false });
    stage.addEventListener("pointerdown", function (event) {
      touching[event.pointerId] = { x: event.clientX, y: event.clientY };
      gap = 0;
      try { stage.setPointerCapture(event.pointerId); } catch (gone) { /* a pointer that was lifted already */ }
    });
    stage.addEventListener("pointermove", moved);
    stage.addEventListener("pointerup", lifted);
    stage.addEventListener("pointercancel", lifted);
    window.addEventListener("resize", function () { if (dialog.open) draw(); });

    this.open = function (link) {
      var image = link.querySelector("img");
      opener = link;
      picture = spec(link);
      dialog.setAttribute("aria-label", image ? image.alt : link.textContent);
      pane.take(picture);
      dialog.showModal();
      whole();
      bar.firstChild.focus();
    };
  }

  var viewer = null;
  document.addEventListener("click", function (event) {
    var link = event.target.closest ? event.target.closest("a[data-deep]") : null;
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    viewer = viewer || new Viewer();
    viewer.open(link);
  });

  Noctuary.Pane = Pane;
  Noctuary.spec = spec;
  window.Noctuary = Noctuary;
})();
