// Five seconds of one corner over a bump, played, stopped or scrubbed by hand. Heights, spring and stop are to one scale; what
// has no height of its own in the answer, tyre and body, is a sketch.

import { ink, label } from "./ink.js";
import { disc, line } from "./shapes.js";

const seen_m = 9, tyreAt = 0.34, tyre = 40, carrier = 12, block = 34, plate = 5, side = 44, below = 30, above = 14;

export class Corner {
  constructor(place, signal) {
    this.place = place;
    this.scene = place.querySelector("[data-scene]");
    this.canvas = this.scene.appendChild(document.createElement("canvas"));
    this.button = place.querySelector("[data-play]");
    this.scrub = place.querySelector("[data-scrub]");
    this.clock = place.querySelector("[data-clock]");
    this.time = 0;
    this.button.addEventListener("click", () => this.playing ? this.pause() : this.play(), { signal });
    this.scrub.addEventListener("input", () => { this.pause(); this.seek(this.scrub.valueAsNumber); }, { signal });
    signal.addEventListener("abort", () => this.pause());
  }

  // It begins by itself once for each kind of bump, and not for a person who asks for stillness.
  show(ride) {
    const another = ride.bump !== this.ride?.bump;
    this.ride = ride;
    this.colours = ink(this.place);
    this.seek(another ? 0 : this.time);
    if (another && !matchMedia("(prefers-reduced-motion: reduce)").matches) this.play();
  }

  get end() { return this.ride.road.length / this.ride.perSecond; }

  play() {
    if (this.time >= this.end) this.time = 0;
    const from = performance.now() - this.time * 1000;
    const step = now => {
      if (this.place.clientWidth === 0) return this.pause();
      this.seek((now - from) / 1000);
      if (this.time >= this.end) return this.pause();
      this.playing = requestAnimationFrame(step);
    };
    cancelAnimationFrame(this.playing);
    this.playing = requestAnimationFrame(step);
    this.button.firstChild.nodeValue = "Pause";
  }

  pause() {
    cancelAnimationFrame(this.playing);
    this.playing = undefined;
    this.button.firstChild.nodeValue = "Play";
  }

  seek(time) {
    this.time = Math.min(this.end, Math.max(0, time));
    const words = `${this.time.toFixed(2)} s of ${this.end.toFixed(2)} s`;
    this.scrub.max = this.end;
    this.scrub.value = this.time;
    this.scrub.setAttribute("aria-valuetext", words);
    this.clock.firstChild.nodeValue = words;
    this.paint();
  }

  // Between two samples as a straight line; before and after, what stands at the end.
  at(values, time) {
    const at = Math.min(values.length - 1, Math.max(0, time * this.ride.perSecond)), first = Math.floor(at);
    return values[first] + (at - first) * ((values[first + 1] ?? values[first]) - values[first]);
  }

  // Pixels a metre, so that all it does stays in the scene.
  scale(height) {
    const { road, body, height: spring } = this.ride;
    const reach = Math.max(...body) + spring - Math.min(0, ...road), room = height - 2 * tyre - carrier - block - below - above;
    return Math.floor(room / reach / 50) * 50;
  }

  paint() {
    const width = this.scene.clientWidth, height = this.scene.clientHeight, ratio = devicePixelRatio;
    if (this.canvas.width !== width * ratio || this.canvas.height !== height * ratio) [this.canvas.width, this.canvas.height] = [width * ratio, height * ratio];
    const context = this.canvas.getContext("2d"), { ride, time } = this;
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.clearRect(0, 0, width, height);
    const scale = this.scale(height), middle = width * tyreAt, ground = height - below + Math.min(0, ...ride.road) * scale;
    const hub = ground - tyre - this.at(ride.wheel, time) * scale;
    const lower = hub - tyre - carrier, rest = ground - 2 * tyre - carrier - ride.height * scale, upper = rest - this.at(ride.body, time) * scale;
    const touched = this.at(ride.stopForce, time) > 0, off = this.at(ride.tyreForce, time) <= 0;
    this.tyre(context, middle, hub);
    this.road(context, width, height, middle, ground, scale);
    this.rest(context, width, rest);
    this.strut(context, middle, hub, lower, upper, scale, touched);
    this.body(context, middle, upper);
    const taken = [], within = { left: 0, top: 0, width, height };
    const say = (words, y, colour) => label(context, this.colours, words, middle + side + 34, y, { colour, weight: 620, size: 13, within, taken });
    if (touched) say("stop touched", (upper + lower) / 2, this.colours.red);
    if (off) say("tyre off the road", hub, this.colours.amber);
  }

  road(context, width, height, middle, ground, scale) {
    const { ride, time, colours } = this, metre = width / seen_m, roadAt = x => ground - this.at(ride.road, time + (x - middle) / metre / ride.speed) * scale;
    const surface = new Path2D();
    for (let x = 0; x <= width; x += 2) x ? surface.lineTo(x, roadAt(x)) : surface.moveTo(x, roadAt(x));
    const earth = new Path2D(surface);
    earth.lineTo(width, height);
    earth.lineTo(0, height);
    context.fillStyle = colours.paper;
    context.fill(earth);
    context.strokeStyle = colours.ink;
    context.lineWidth = 1.7;
    context.stroke(surface);
    // Hatching that goes with the road shows how fast it passes.
    context.strokeStyle = colours.quiet;
    context.lineWidth = 0.7;
    const every = metre / 3, passed = time * ride.speed * metre % every;
    for (let x = -passed; x < width + every; x += every) line(context, x, roadAt(x) + 1, x - 9, roadAt(x) + 10);
  }

  rest(context, width, rest) {
    const { colours } = this;
    context.strokeStyle = colours.rule;
    context.lineWidth = 1;
    context.setLineDash([10, 3, 2, 3]);
    line(context, 0, rest, width, rest);
    context.setLineDash([]);
    context.fillStyle = colours.quiet;
    context.font = colours.font(12);
    context.textAlign = "right";
    context.textBaseline = "bottom";
    context.fillText("body at rest", width - 4, rest - 3);
  }

  tyre(context, x, hub) {
    const { colours } = this;
    context.strokeStyle = colours.rubber;
    context.lineWidth = 11;
    context.beginPath();
    context.arc(x, hub, tyre - 5.5, 0, 7);
    context.stroke();
    disc(context, x, hub, 5, colours.ink, colours.paper);
  }

  strut(context, x, hub, lower, upper, scale, touched) {
    const { ride, colours } = this, free = (ride.stop ?? 0) * scale, gap = (ride.gap ?? 0) * scale;
    const head = Math.max(0, ride.height * scale - 2 * plate - free - gap), headTop = lower - plate - head;
    context.lineWidth = 1.4;
    context.strokeStyle = colours.ink;
    box(context, x - 7, hub - 8, 14, lower - hub + 8, colours.paper);
    this.bellows(context, x, lower - plate, upper + plate, -1);
    this.bellows(context, x, lower - plate, upper + plate, 1);
    context.lineWidth = 1.4;
    box(context, x - 3, headTop, 6, upper - headTop, colours.paper);
    box(context, x - 14, lower - plate, 28, -head, colours.paper);
    if (free > 0) {
      context.strokeStyle = touched ? colours.red : colours.ink;
      context.lineWidth = touched ? 2 : 1.4;
      box(context, x - 11, upper + plate, 22, Math.max(2, Math.min(free, headTop - upper - plate)), colours.stop);
      context.strokeStyle = colours.ink;
      context.lineWidth = 1.4;
    }
    box(context, x - side, lower, 2 * side, -plate, colours.paper);
    box(context, x - side, upper, 2 * side, plate, colours.paper);
  }

  // A wall of constant length: the lower it stands, the further it bulges.
  bellows(context, x, lower, upper, to) {
    const height = lower - upper, bulge = 16 + Math.max(0, 70 - height) * 0.35;
    context.lineWidth = 4;
    context.strokeStyle = this.colours.rubber;
    context.beginPath();
    context.moveTo(x + to * (side - 4), lower);
    context.bezierCurveTo(x + to * (side + bulge), lower, x + to * (side + bulge), upper, x + to * (side - 4), upper);
    context.stroke();
    context.strokeStyle = this.colours.ink;
  }

  body(context, x, upper) {
    const { colours } = this;
    context.lineWidth = 1.7;
    box(context, x - 1.7 * side, upper, 3.4 * side, -block, colours.paper);
    context.fillStyle = colours.ink;
    context.font = colours.font(13, 560);
    context.textAlign = "center";
    context.textBaseline = "middle";
    context.fillText("body", x, upper - block / 2);
  }
}

function box(context, x, y, width, height, fill) {
  context.fillStyle = fill;
  context.fillRect(x, y, width, height);
  context.strokeRect(x, y, width, height);
}
