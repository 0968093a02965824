// The kit's page in the hand: every drag, slide, key and typed text becomes one call to the program, which answers with one
// frame of bytes; the frame is painted straight onto the page. Only one call is under way at a time and a moving hand keeps
// only its newest value, so nothing queues behind a drag.

import { read } from "./frame.js";
import { Plot } from "./plot.js";
import { RateMap } from "./map.js";
import { Corner } from "./corner.js";
import { SettingMap } from "./settings.js";

export function start(root, program, first) {
  const board = new Board(root, program);
  board.paint(read(first));
  return { map: bytes => board.mapped(read(bytes)), dispose: () => board.stop.abort() };
}

class Board {
  constructor(root, program) {
    this.root = root;
    this.program = program;
    this.waiting = [];
    this.busy = false;
    this.stop = new AbortController();
    this.plots = new Map();
    this.open = "height";
    this.sliders = {};
    this.handles = {};
    this.told = {};
    this.svg = root.querySelector("svg.section");
    this.drawing = root.querySelector(".drawing");
    this.listen();
  }

  // Hands.

  listen() {
    const on = (target, name, hand, options = {}) => target.addEventListener(name, hand, { signal: this.stop.signal, ...options });
    on(this.root, "input", event => {
      if (event.target.dataset.type) event.target.dataset.begun = "";
      if (event.target.dataset.slide) this.slide(event.target.dataset.slide, event.target.valueAsNumber);
      if (event.target.closest("[data-figures] .tabs")) this.show(event.target);
    });
    on(this.root, "change", event => {
      const { slide, type, choose } = event.target.dataset;
      if (slide) this.releaseSoon();
      if (type) this.typed(event.target);
      if (choose) this.choose(choose, event.target.value);
    });
    on(this.root, "focusout", event => { delete event.target.dataset?.begun; });
    on(this.root, "click", event => {
      const place = event.target.closest("[data-place]");
      if (place) this.choose("place", place.dataset.place);
      const button = event.target.closest("button");
      if (button?.dataset.choose) this.choose(button.dataset.choose, "");
      if (button?.dataset.sheet) this.sheet(button.dataset.sheet);
      if (button?.dataset.swipe) this.swipe(button.dataset.swipe);
    });
    on(this.root, "pointerdown", event => this.grab(event));
    on(this.root, "keydown", event => this.key(event));
    on(this.root, "toggle", event => this.opened(event.target), { capture: true });
    on(document, "keydown", event => this.shortcut(event));
    on(matchMedia("(prefers-color-scheme: dark)"), "change", () => this.repaint());
    on(window, "beforeprint", () => this.repaint());
    const main = this.root.querySelector("main");
    on(main, "scroll", () => this.swiped(main), { passive: true });
    const resized = new ResizeObserver(() => { this.measure(); this.repaint(); });
    resized.observe(this.svg);
    resized.observe(this.root.querySelector(".questions"));
    this.stop.signal.addEventListener("abort", () => resized.disconnect());
  }

  // A text begun stays as it is until it is handed over, whatever is painted meanwhile.
  typed(value) {
    delete value.dataset.begun;
    this.ask("Type", value.dataset.type, value.value);
  }

  choose(field, choice) {
    this.ask("Choose", field, choice);
  }

  async sheet(name) {
    const pdf = await this.program.invokeMethodAsync("Sheet");
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([pdf], { type: "application/pdf" }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }

  shortcut(event) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const field = key === "z" ? (event.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : key === "s" ? "save" : null;
    if (!field) return;
    event.preventDefault();
    this.choose(field, "");
  }

  // Arrow keys on a handle or in a value: fine steps, with Shift or a page key coarse ones.
  key(event) {
    const field = event.target.closest?.("[data-handle]")?.dataset.handle ?? event.target.dataset?.type;
    const slider = this.sliders[field];
    if (!slider || event.ctrlKey || event.metaKey || event.altKey) return;
    const handle = this.handles[field], typed = event.target.dataset?.type;
    const sign = { ArrowUp: 1, PageUp: 1, ArrowDown: -1, PageDown: -1, ...(typed ? {} : { ArrowRight: 1, ArrowLeft: -1 }) }[event.key];
    if (event.key === "Escape" && typed) { delete event.target.dataset.begun; event.target.value = slider.text; return; }
    if (!sign && (typed || !["Home", "End"].includes(event.key))) return;
    event.preventDefault();
    delete event.target.dataset.begun;
    const step = event.shiftKey || event.key.startsWith("Page") ? slider.coarse : slider.fine;
    const up = typed || !handle ? 1 : Math.sign(handle.up || handle.right);
    const to = event.key === "Home" ? slider.least : event.key === "End" ? slider.greatest : slider.value + sign * up * step;
    slider.value = Math.min(slider.greatest, Math.max(slider.least, to));
    this.slide(field, slider.value);
    this.releaseSoon();
  }

  grab(event) {
    if (event.button !== 0) return;
    const handle = event.target.closest("[data-handle]");
    if (handle) return this.drag(event, handle, this.alongDrawing(handle, event));
    const plot = event.target.closest("[data-plot]");
    const painter = plot && this.plots.get(plot.dataset.plot);
    if (painter?.alongHeight) this.drag(event, plot, e => ["height", painter.heightAt(e.clientX)], true);
  }

  // A millimetre of the drawing is a millimetre of what is drawn, whatever the scale.
  alongDrawing(handle, { clientX, clientY }) {
    const field = handle.dataset.handle, { value, up, right } = this.handles[field], millimetre = this.perPixel(handle.ownerSVGElement);
    return e => [field, value + ((clientY - e.clientY) * up + (e.clientX - clientX) * right) * millimetre];
  }

  drag(event, target, value, atOnce = false) {
    event.preventDefault();
    target.focus?.({ preventScroll: true });
    target.setPointerCapture(event.pointerId);
    const hand = new AbortController(), options = { signal: hand.signal };
    const move = e => this.slide(...value(e));
    if (atOnce) move(event);
    target.addEventListener("pointermove", move, options);
    for (const end of ["pointerup", "pointercancel"]) target.addEventListener(end, () => { hand.abort(); this.release(); }, options);
  }

  // The question that opens stays before the eye while the one above it folds.
  opened(details) {
    this.repaint();
    if (!details.dataset.question || !this.frame) return;
    const open = this.root.querySelector(".question[open]")?.dataset.question ?? "";
    if (open !== this.open) this.choose("open", this.open = open);
    if (!details.open) return;
    const { top } = details.getBoundingClientRect();
    if (top < parseFloat(getComputedStyle(details).scrollMarginTop) || top > innerHeight / 3) details.scrollIntoView({ block: "start" });
  }

  swipe(id) {
    this.root.querySelector(`#${id}`).scrollIntoView({ inline: "start", block: "nearest" });
  }

  swiped(main) {
    const at = main.scrollLeft > main.clientWidth / 2 ? "sheet" : "questions";
    for (const button of this.root.querySelectorAll("[data-swipe]")) button.setAttribute("aria-pressed", button.dataset.swipe === at);
  }

  show(tab) {
    const figures = tab.closest("[data-figures]");
    for (const figure of figures.querySelectorAll("[data-figure]")) figure.hidden = figure.dataset.figure !== tab.value;
    this.repaint();
  }

  // Calls: one under way; a slide that waits is overtaken by a newer one.

  slide(field, shown) {
    this.hintSeen();
    if (this.settling && this.slid !== field) this.release();
    this.slid = field;
    const last = this.waiting.at(-1);
    if (last?.[0] === "Slide" && last[1] === field) last[2] = shown;
    else this.waiting.push(["Slide", field, shown]);
    this.send();
  }

  // Key presses that follow each other are one step to undo.
  releaseSoon() {
    clearTimeout(this.settling);
    this.settling = setTimeout(() => this.release(), 400);
  }

  release() {
    clearTimeout(this.settling);
    this.settling = undefined;
    this.waiting.push(["Release"]);
    this.send();
  }

  ask(...call) {
    if (this.settling) this.release();
    this.waiting.push(call);
    this.send();
  }

  async send() {
    if (this.busy) return;
    this.busy = true;
    this.root.setAttribute("aria-busy", "true");
    try {
      while (this.waiting.length > 0) {
        this.paint(read(await this.program.invokeMethodAsync(...this.waiting.shift())));
        // One frame of bytes for one frame of the screen.
        await new Promise(done => document.hidden ? done() : requestAnimationFrame(done));
      }
    } catch (error) {
      // A page that was left while a call was under way gets no answer, and needs none.
      if (this.root.isConnected) throw error;
    } finally {
      this.busy = false;
      this.root.removeAttribute("aria-busy");
    }
  }

  // The map of settings comes by itself, piece by piece.

  mapped({ settings, say }) {
    [this.settings, this.mapWords] = [settings, say];
    this.say(this.frame.say);
    this.paintMap();
    this.root.dataset.mapped = Number(this.root.dataset.mapped ?? 0) + 1;
    this.root.dataset.whole = String(say["map.whole"] === "yes");
  }

  paintMap() {
    const place = this.root.querySelector("[data-settings]");
    if (!place || place.clientWidth === 0 || !this.settings) return;
    if (this.map?.place !== place) this.map = new SettingMap(place, this.stop.signal, { cell: at => this.hear(at), take: (column, row) => this.choose("cell", `${column},${row}`) });
    this.map.paint(this.settings);
  }

  // What a cell says; a hand that has moved on hears the newest only.
  async hear(at) {
    this.heard = at;
    const words = at ? await this.program.invokeMethodAsync("Cell", ...at) : "";
    if (this.heard === at) this.root.querySelector("[data-cell]").textContent = words;
  }

  hintSeen() {
    for (const hint of this.root.querySelectorAll(".hint, .drag")) hint.style.display = "none";
  }

  // Painting.

  paint(frame) {
    this.frame = frame;
    this.say(frame.say);
    this.setHands(frame);
    this.drawing.innerHTML = frame.section;
    const rungs = this.root.querySelector("[data-ladder]");
    if (rungs && frame.ladder) rungs.innerHTML = frame.ladder;
    this.paintViews(frame.views);
    const room = this.root.querySelector("[data-room]");
    if (room && frame.room) room.innerHTML = frame.room;
    this.judge(frame);
    this.measure();
    this.repaint();
    this.root.dataset.painted = Number(this.root.dataset.painted ?? 0) + 1;
  }

  // Views of the car stand side by side at one scale: as wide as what they show.
  paintViews(views) {
    for (const [id, { shapes, viewBox, summary }] of Object.entries(views)) {
      const view = this.root.querySelector(`[data-view="${id}"]`);
      if (!view) continue;
      if (view.getAttribute("viewBox") !== viewBox) {
        view.setAttribute("viewBox", viewBox);
        for (const panel of [view, ...this.root.querySelectorAll(`[data-as="${id}"]`)]) panel.style.flexGrow = viewBox.split(" ")[2];
      }
      view.setAttribute("aria-label", summary);
      view.querySelector("[data-shapes]").innerHTML = shapes;
    }
  }

  say(words) {
    if (this.open === "settings") words = { ...words, ...this.mapWords };
    for (const place of this.root.querySelectorAll("[data-say]")) {
      const text = words[place.dataset.say] ?? "";
      // The text node stays the one Blazor made, so that both may write to it.
      if (!place.firstChild) place.append(text);
      else if (place.firstChild.nodeValue !== text) place.firstChild.nodeValue = text;
    }
    for (const place of this.root.querySelectorAll("[data-shown]")) place.hidden = !words[place.dataset.shown];
  }

  setHands(frame) {
    this.sliders = frame.sliders;
    // A hand that is ahead of this frame goes on from where it is.
    for (const [call, field, shown] of this.waiting) if (call === "Slide" && this.sliders[field]) this.sliders[field].value = shown;
    this.handles = frame.handles;
    for (const [field, slider] of Object.entries(frame.sliders)) {
      for (const slide of this.root.querySelectorAll(`[data-slide="${field}"]`)) {
        Object.assign(slide, { min: slider.least, max: slider.greatest, step: slider.fine });
        slide.value = slider.value;
        slide.setAttribute("aria-valuetext", slider.text);
      }
      for (const handle of frame.handles[field] ? this.root.querySelectorAll(`[data-handle="${field}"]`) : []) {
        for (const [name, value] of Object.entries({ valuenow: slider.value, valuemin: slider.least, valuemax: slider.greatest, valuetext: slider.text }))
          handle.setAttribute(`aria-${name}`, value);
      }
    }
    for (const [field, choice] of Object.entries(frame.choices)) {
      if (choice === null) continue;
      for (const select of this.root.querySelectorAll(`select[data-choose="${field}"]`)) select.value = choice;
    }
    for (const value of this.root.querySelectorAll("[data-type]")) {
      const refused = frame.say[`${value.dataset.type}.refused`];
      value.setAttribute("aria-invalid", refused ? "true" : "false");
      if (!refused && value.dataset.begun === undefined) value.value = frame.say[`${value.dataset.type}.value`];
    }
  }

  judge(frame) {
    for (const finding of this.root.querySelectorAll("[data-finding], [data-judged]"))
      finding.dataset.verdict = frame.say[`finding.${finding.dataset.finding ?? finding.dataset.judged}.verdict`] ?? "";
    this.root.querySelector("[data-missed]")?.classList.toggle("some", frame.missed.length > 0);
    this.enable("undo", frame.canUndo);
    this.enable("redo", frame.canRedo);
    this.enable("save", frame.changed);
    const recommend = this.root.querySelector("[data-choose=recommend]");
    if (recommend) recommend.hidden = frame.recommended;
  }

  enable(choice, can) {
    this.root.querySelector(`button[data-choose="${choice}"]`).disabled = !can;
  }

  perPixel(svg = this.svg) {
    const matrix = svg.getScreenCTM();
    return matrix && matrix.d > 0 ? 1 / matrix.d : 1;
  }

  // The drawing's letters keep their size on the screen: the program is told what that is in millimetres of the strut.
  measure() {
    if (!this.frame) return;
    if (this.svg.getAttribute("viewBox") !== this.frame.viewBox) this.svg.setAttribute("viewBox", this.frame.viewBox);
    const perPixel = this.perPixel(), height = Math.round(perPixel * 13 * 4) / 4;
    for (const handle of this.root.querySelectorAll("[data-handle]")) {
      const at = this.handles[handle.dataset.handle];
      if (at) handle.setAttribute("transform", `translate(${at.x} ${at.y}) scale(${this.perPixel(handle.ownerSVGElement)})`);
    }
    const scale = this.root.querySelector("[data-scale]");
    const ratio = perPixel * 96 / 25.4;
    if (scale) scale.textContent = ratio >= 1 ? `1 : ${ratio.toFixed(1)}` : `${(1 / ratio).toFixed(1)} : 1`;
    this.tell("text", this.svg, height, 0.6);
    const view = this.root.querySelector(".question[open] [data-view]");
    if (view?.hasAttribute("viewBox")) this.tell("viewText", view, Math.round(this.perPixel(view) * 12.5), 2);
  }

  tell(field, svg, height, least) {
    if (svg.clientHeight === 0 || Math.abs(height - (this.told[field] ?? 0)) < least) return;
    this.told[field] = height;
    this.ask("Choose", field, String(height));
  }

  repaint() {
    if (!this.frame) return;
    if (this.frame.map) this.grid = this.frame.map;
    for (const place of this.root.querySelectorAll("[data-plot]")) {
      if (place.clientWidth === 0) continue;
      const id = place.dataset.plot;
      if (!this.plots.has(id)) this.plots.set(id, id === "map" ? new RateMap(place) : new Plot(place, id));
      if (id === "map") this.plots.get(id).paint(this.grid, this.frame.mapAt);
      else if (this.frame.charts[id]) this.plots.get(id).paint(this.frame.charts[id]);
    }
    this.paintMap();
    const corner = this.root.querySelector("[data-corner]");
    if (corner && corner.clientWidth > 0 && this.frame.corner) {
      if (this.corner?.place !== corner) this.corner = new Corner(corner, this.stop.signal);
      this.corner.show(this.frame.corner);
    }
  }
}
