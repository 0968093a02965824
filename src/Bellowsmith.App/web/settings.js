// Every setting of two kinds: shade in steps of ink, lines with their number, infeasible cells hatched and named, the present
// setting as the dot, the least as a ring. A cell can be pointed at or reached with the arrow keys, and taken.

import { ink, label } from "./ink.js";
import { disc, line, ticks } from "./shapes.js";

const margin = { left: 66, right: 14, top: 12, bottom: 50 };
const darkest = 0.36;

export class SettingMap {
  constructor(place, signal, { cell, take }) {
    this.place = place;
    this.canvas = place.appendChild(document.createElement("canvas"));
    this.drawn = document.createElement("canvas");
    this.cursor = null;
    const on = (name, hand) => place.addEventListener(name, hand, { signal });
    on("pointermove", event => this.point(event, cell));
    on("pointerleave", () => { if (document.activeElement !== place) this.move(null, cell); });
    on("focus", () => { if (place.matches(":focus-visible")) this.move(this.cursor ?? this.start(), cell); });
    on("blur", () => this.move(null, cell));
    on("click", event => { const at = this.under(event); if (at) take(...at); });
    on("keydown", event => this.press(event, cell, take));
  }

  paint(map) {
    if (!map) return;
    this.colours = ink(this.place);
    const size = [this.place.clientWidth, this.place.clientHeight, devicePixelRatio];
    this.box = { left: margin.left, top: margin.top, width: size[0] - margin.left - margin.right, height: size[1] - margin.top - margin.bottom };
    const key = JSON.stringify([size, this.colours.ink, this.colours.paper]);
    if (map !== this.map || key !== this.key) {
      const other = this.map && (map.x.values.length !== this.map.x.values.length || map.y.values.length !== this.map.y.values.length || map.x.title !== this.map.x.title || map.y.title !== this.map.y.title);
      if (other) this.cursor = null;
      [this.map, this.key, this.taken] = [map, key, []];
      for (const canvas of [this.canvas, this.drawn]) [canvas.width, canvas.height] = [size[0] * size[2], size[1] * size[2]];
      this.draw(this.context(this.drawn));
    }
    const context = this.context(this.canvas);
    context.clearRect(0, 0, size[0], size[1]);
    context.drawImage(this.drawn, 0, 0, size[0], size[1]);
    if (this.cursor) this.frame(context, ...this.cursor);
    if (map.here) disc(context, this.x(map.here.x), this.y(map.here.y), 5.5, this.colours.accent, this.colours.paper);
  }

  context(canvas) {
    const context = canvas.getContext("2d");
    context.setTransform(devicePixelRatio, 0, 0, devicePixelRatio, 0, 0);
    return context;
  }

  get columns() { return this.map.x.values.length; }

  get rows() { return this.map.y.values.length; }

  x(value) { return this.box.left + (value - this.map.x.low) / (this.map.x.high - this.map.x.low) * this.box.width; }

  y(value) { return this.box.top + this.box.height - (value - this.map.y.low) / (this.map.y.high - this.map.y.low) * this.box.height; }

  // The box of a cell.
  cell(column, row) {
    const left = this.x(this.map.x.edges[column]), right = this.x(this.map.x.edges[column + 1]), top = this.y(this.map.y.edges[row + 1]), bottom = this.y(this.map.y.edges[row]);
    return { left, top, width: right - left, height: bottom - top };
  }

  // Hands.

  under({ clientX, clientY }) {
    if (!this.map) return null;
    const { left, top } = this.place.getBoundingClientRect(), at = (edges, where, pixel) => edges.findLastIndex((edge, k) => k < edges.length - 1 && where(pixel, edge));
    const [px, py] = [clientX - left, clientY - top], box = this.box;
    if (px < box.left || px > box.left + box.width || py < box.top || py > box.top + box.height) return null;
    return [at(this.map.x.edges, (pixel, edge) => pixel >= this.x(edge), px), at(this.map.y.edges, (pixel, edge) => pixel <= this.y(edge), py)];
  }

  point(event, cell) {
    const at = this.under(event);
    if (at && this.cursor && at[0] === this.cursor[0] && at[1] === this.cursor[1]) return;
    this.move(at, cell);
  }

  start() { return this.map?.cell ?? [0, 0]; }

  move(to, cell) {
    if (!this.map) return;
    this.cursor = to;
    this.paint(this.map);
    cell(to);
  }

  press(event, cell, take) {
    if (!this.map || event.ctrlKey || event.metaKey || event.altKey) return;
    const [column, row] = this.cursor ?? this.start(), far = event.shiftKey ? 8 : 1;
    const to = {
      ArrowRight: [column + far, row], ArrowLeft: [column - far, row], ArrowUp: [column, row + far], ArrowDown: [column, row - far],
      PageUp: [column, row + 8], PageDown: [column, row - 8], Home: [0, row], End: [this.columns - 1, row],
    }[event.key];
    if (!to && event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    if (to) this.move([Math.min(this.columns - 1, Math.max(0, to[0])), Math.min(this.rows - 1, Math.max(0, to[1]))], cell);
    else take(column, row);
  }

  // Painting.

  draw(context) {
    this.shade(context);
    this.hatch(context);
    const drawn = this.map.lines.map(run => this.line(context, run));
    this.axes(context);
    this.marks(context);
    this.reasons(context);
    for (const { words, places } of drawn.filter(d => d.length > 60).sort((a, b) => b.length - a.length)) this.on(context, words, places, this.box);
    if (!this.map.hasLines) this.numbers(context);
  }

  shade(context) {
    const { values, levels } = this.map;
    context.fillStyle = this.colours.ink;
    for (let k = 0; k < values.length; k++) {
      if (Number.isNaN(values[k])) continue;
      context.globalAlpha = levels.length ? darkest * levels.filter(level => level <= values[k]).length / levels.length : 0;
      this.fill(context, k);
    }
    context.globalAlpha = 1;
  }

  // On whole pixels, so that no seams show.
  fill(context, k) {
    const { left, top, width, height } = this.cell(k % this.columns, Math.floor(k / this.columns)), p = devicePixelRatio;
    const [x0, y0, x1, y1] = [left, top, left + width, top + height].map(v => Math.round(v * p) / p);
    context.fillRect(x0, y0, x1 - x0, y1 - y0);
  }

  hatch(context) {
    const box = this.box, { reasons } = this.map;
    context.save();
    context.beginPath();
    for (let k = 0; k < reasons.length; k++) {
      if (reasons[k] < 0) continue;
      const { left, top, width, height } = this.cell(k % this.columns, Math.floor(k / this.columns));
      context.rect(left, top, width, height);
    }
    context.clip();
    context.strokeStyle = this.colours.quiet;
    context.lineWidth = 0.7;
    for (let start = box.left - box.height; start < box.left + box.width; start += 8) line(context, start, box.top + box.height, start + box.height, box.top);
    context.restore();
    context.strokeStyle = this.colours.quiet;
    context.lineWidth = 0.8;
    for (let k = 0; k < reasons.length; k++) {
      const [column, row] = [k % this.columns, Math.floor(k / this.columns)], { left, top, width, height } = this.cell(column, row);
      if (column > 0 && reasons[k - 1] !== reasons[k]) line(context, left, top, left, top + height);
      if (row > 0 && reasons[k - this.columns] !== reasons[k]) line(context, left, top + height, left + width, top + height);
    }
  }

  line(context, { x, y, words }) {
    const points = Array.from(x, (at, k) => [this.x(at), this.y(y[k])]), half = Math.floor(points.length / 2);
    context.strokeStyle = this.colours.ink;
    context.lineWidth = 1;
    context.lineJoin = "round";
    context.beginPath();
    for (const [px, py] of points) context.lineTo(px, py);
    context.stroke();
    const length = points.reduce((sum, [px, py], k) => k ? sum + Math.hypot(px - points[k - 1][0], py - points[k - 1][1]) : 0, 0);
    return { words, length, places: points.slice(half).concat(points.slice(0, half).reverse()) };
  }

  // Words on the first of their places where they stand clear; nowhere where there is none.
  on(context, words, places, box, size = 11) {
    context.font = this.colours.font(size, 500);
    const half = context.measureText(words).width / 2 + 3, tall = size / 2 + 2;
    const clear = ([px, py]) => px - half >= box.left && px + half <= box.left + box.width && py - tall >= box.top && py + tall <= box.top + box.height
      && !this.taken.some(t => px - half < t.right && t.left < px + half && py - tall < t.bottom && t.top < py + tall);
    const at = places.find(clear);
    if (at) label(context, this.colours, words, at[0], at[1], { align: "center", size, within: box, taken: this.taken });
  }

  reasons(context) {
    for (const { words, cells: patch } of this.map.patches) {
      const cells = Array.from(patch, k => { const { left, top, width, height } = this.cell(k % this.columns, Math.floor(k / this.columns)); return [left + width / 2, top + height / 2]; });
      const middle = [0, 1].map(i => cells.reduce((sum, c) => sum + c[i], 0) / cells.length);
      const near = c => Math.hypot(c[0] - middle[0], c[1] - middle[1]);
      this.on(context, words, [middle, ...cells.sort((a, b) => near(a) - near(b))].filter((at, k) => k > 0 || near(cells[0]) < 12), this.box, 12);
    }
  }

  // Between choices no line leads: each cell says its own number where that fits.
  numbers(context) {
    const { values, decimals } = this.map;
    context.font = this.colours.font(11, 500);
    context.fillStyle = this.colours.ink;
    context.textAlign = "center";
    context.textBaseline = "middle";
    for (let k = 0; k < values.length; k++) {
      if (Number.isNaN(values[k])) continue;
      const { left, top, width, height } = this.cell(k % this.columns, Math.floor(k / this.columns)), words = values[k].toFixed(Math.max(0, decimals - (Math.abs(values[k]) >= 10 ? 1 : 0)));
      const half = context.measureText(words).width / 2 + 2, [px, py] = [left + width / 2, top + height / 2];
      if (2 * half > width || height < 13 || this.taken.some(t => px - half < t.right && t.left < px + half && py - 7 < t.bottom && t.top < py + 7)) continue;
      context.fillText(words, px, py);
    }
  }

  axes(context) {
    const box = this.box, { quiet, ink: black, font } = this.colours, { x, y } = this.map;
    context.strokeStyle = black;
    context.lineWidth = 1;
    context.strokeRect(box.left, box.top, box.width, box.height);
    context.fillStyle = quiet;
    context.font = font(12);
    context.textAlign = "center";
    context.textBaseline = "top";
    let end = -Infinity;
    for (const { at, label: words } of labelled(x)) {
      const half = context.measureText(words).width / 2, px = this.x(at);
      if (px - half < end + 6) continue;
      line(context, px, box.top + box.height, px, box.top + box.height + 4);
      context.fillText(words, px, box.top + box.height + 7);
      end = px + half;
    }
    context.fillText(x.title, box.left + box.width / 2, box.top + box.height + 30);
    context.textAlign = "right";
    context.textBaseline = "middle";
    for (const { at, label: words } of labelled(y)) {
      line(context, box.left - 4, this.y(at), box.left, this.y(at));
      context.fillText(fitted(context, words, margin.left - 28), box.left - 7, this.y(at));
    }
    context.save();
    context.translate(12, box.top + box.height / 2);
    context.rotate(-Math.PI / 2);
    context.textAlign = "center";
    context.fillText(y.title, 0, 0);
    context.restore();
  }

  marks(context) {
    const { here, least } = this.map, { accent, paper, ink: black } = this.colours, box = this.box;
    const place = point => [this.x(point.x), this.y(point.y)];
    for (const point of [least, here]) {
      if (!point) continue;
      const [px, py] = place(point);
      if (point === least) ring(context, px, py, black);
      this.taken.push({ left: px - 8, right: px + 8, top: py - 8, bottom: py + 8 });
    }
    if (here) { const [px, py] = place(here); label(context, this.colours, here.label, px + 10, py - 15, { colour: accent, weight: 620, within: box, taken: this.taken }); }
    if (least) { const [px, py] = place(least); label(context, this.colours, least.label, px + 10, py + 15, { within: box, taken: this.taken }); }
  }

  frame(context, column, row) {
    const { left, top, width, height } = this.cell(column, row), { ink: black, paper } = this.colours;
    for (const [colour, by, thick] of [[paper, 2.5, 4], [black, 2.5, 2]]) {
      context.strokeStyle = colour;
      context.lineWidth = thick;
      context.strokeRect(left - by, top - by, width + 2 * by, height + 2 * by);
    }
  }
}

function ring(context, x, y, colour) {
  context.beginPath();
  context.arc(x, y, 6, 0, 7);
  context.strokeStyle = colour;
  context.lineWidth = 2;
  context.stroke();
}

function fitted(context, words, room) {
  while (words.length > 2 && context.measureText(words).width > room) words = `${words.slice(0, -2).trimEnd()}…`;
  return words;
}

function labelled(axis) {
  return axis.ticks ?? ticks(axis).map(at => ({ at, label: String(at) }));
}
