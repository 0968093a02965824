// The rate over spring height and load as contour lines, each with its number; the grid's lines are kept until the grid
// changes, the setting is painted over them.

import { contours } from "d3-contour";
import { ink, label } from "./ink.js";
import { disc, line, ticks } from "./shapes.js";

const margin = { left: 66, right: 14, top: 10, bottom: 50 };

export class RateMap {
  alongHeight = true;

  constructor(place) {
    this.place = place;
    this.canvas = place.appendChild(document.createElement("canvas"));
    this.lines = document.createElement("canvas");
  }

  get box() {
    return { left: margin.left, top: margin.top, width: this.place.clientWidth - margin.left - margin.right, height: this.place.clientHeight - margin.top - margin.bottom };
  }

  heightAt(clientX) {
    const box = this.box, share = (clientX - this.place.getBoundingClientRect().left - box.left) / box.width;
    return this.grid.x.low + Math.min(1, Math.max(0, share)) * (this.grid.x.high - this.grid.x.low);
  }

  paint(grid, at) {
    this.colours = ink(this.place);
    const size = [this.place.clientWidth, this.place.clientHeight, devicePixelRatio];
    const key = JSON.stringify([size, this.colours.ink, this.colours.paper]);
    if (grid !== this.grid || key !== this.key) {
      [this.grid, this.key, this.taken] = [grid, key, []];
      for (const canvas of [this.canvas, this.lines]) [canvas.width, canvas.height] = [size[0] * size[2], size[1] * size[2]];
      this.draw(this.context(this.lines));
    }
    const context = this.context(this.canvas);
    context.clearRect(0, 0, size[0], size[1]);
    this.below(context, at);
    context.drawImage(this.lines, 0, 0, size[0], size[1]);
    this.setting(context, at);
  }

  context(canvas) {
    const context = canvas.getContext("2d");
    context.setTransform(devicePixelRatio, 0, 0, devicePixelRatio, 0, 0);
    return context;
  }

  x(value) { return this.box.left + (value - this.grid.x.low) / (this.grid.x.high - this.grid.x.low) * this.box.width; }

  y(value) { return this.box.top + this.box.height - (value - this.grid.y.low) / (this.grid.y.high - this.grid.y.low) * this.box.height; }

  draw(context) {
    this.axes(context);
    context.lineJoin = "round";
    this.grid.levels.forEach(level => {
      context.strokeStyle = this.colours.ink;
      context.lineWidth = 1;
      this.stroke(context, level, level.toFixed(0), this.colours.ink);
    });
  }

  stroke(context, level, words, colour) {
    const box = this.box;
    let longest = [];
    for (const run of this.runs(level)) {
      context.beginPath();
      run.forEach(([px, py], k) => k ? context.lineTo(px, py) : context.moveTo(px, py));
      context.stroke();
      if (run.length > longest.length) longest = run;
    }
    if (longest.length < 12) return;
    const [px, py] = longest[Math.floor(longest.length * 0.62)];
    label(context, this.colours, words, px, py, { colour, align: "center", size: 11, within: box, taken: this.taken });
  }

  // Polygons of the contour without their stretches along the edge or along cells that have no value.
  runs(level) {
    const { columns, rows, rate } = this.grid, runs = [];
    const shape = contours().size([columns, rows]).thresholds([level])(Array.from(rate, v => Number.isNaN(v) ? null : v))[0];
    const known = (gx, gy) => {
      for (const c of [Math.floor(gx - 0.5), Math.ceil(gx - 0.5)])
        for (const r of [Math.floor(gy - 0.5), Math.ceil(gy - 0.5)])
          if (c < 0 || r < 0 || c >= columns || r >= rows || Number.isNaN(rate[r * columns + c])) return false;
      return true;
    };
    for (const polygon of shape.coordinates)
      for (const ring of polygon) {
        let run = [];
        for (const [gx, gy] of ring) {
          if (known(gx, gy)) { run.push(this.pixel(gx, gy)); continue; }
          if (run.length > 1) runs.push(run);
          run = [];
        }
        if (run.length > 1) runs.push(run);
      }
    return runs;
  }

  pixel(gx, gy) {
    const box = this.box;
    return [box.left + (gx - 0.5) / (this.grid.columns - 1) * box.width, box.top + box.height - (gy - 0.5) / (this.grid.rows - 1) * box.height];
  }

  axes(context) {
    const box = this.box, { faint, quiet, font } = this.colours;
    context.strokeStyle = faint;
    context.lineWidth = 1;
    context.fillStyle = quiet;
    context.font = font(12);
    context.textAlign = "center";
    context.textBaseline = "top";
    for (const tick of ticks(this.grid.x)) {
      line(context, this.x(tick), box.top, this.x(tick), box.top + box.height);
      context.fillText(String(tick), this.x(tick), box.top + box.height + 7);
    }
    context.textAlign = "right";
    context.textBaseline = "middle";
    for (const tick of ticks(this.grid.y)) {
      line(context, box.left, this.y(tick), box.left + box.width, this.y(tick));
      context.fillText(String(tick), box.left - 7, this.y(tick));
    }
    context.textAlign = "center";
    context.fillText(`${this.grid.x.title} · lines: rate in ${this.grid.unit}`, box.left + box.width / 2, box.top + box.height + 38);
    context.save();
    context.translate(14, box.top + box.height / 2);
    context.rotate(-Math.PI / 2);
    context.fillText(this.grid.y.title, 0, 0);
    context.restore();
  }

  // Under the contour's numbers, which then stay readable: the height set, the wanted rate and the drive load.
  below(context, at) {
    const box = this.box, { accent, ink: black } = this.colours, px = this.x(at.height), py = this.y(at.load);
    if (at.wanted !== null) {
      context.strokeStyle = accent;
      context.lineWidth = 1.5;
      context.setLineDash([5, 4]);
      for (const run of this.runs(at.wanted)) {
        context.beginPath();
        run.forEach(([x, y], k) => k ? context.lineTo(x, y) : context.moveTo(x, y));
        context.stroke();
      }
      context.setLineDash([]);
    }
    context.strokeStyle = black;
    context.lineWidth = 1.2;
    context.setLineDash([10, 3, 2, 3]);
    line(context, box.left, py, box.left + box.width, py);
    context.setLineDash([]);
    context.strokeStyle = accent;
    line(context, px, py, px, box.top + box.height);
  }

  setting(context, at) {
    const box = this.box, { accent, paper } = this.colours, taken = [...this.taken];
    const px = this.x(at.height), py = this.y(at.load);
    disc(context, px, py, 5.5, accent, paper);
    taken.push({ left: px - 7, right: px + 7, top: py - 7, bottom: py + 7 });
    label(context, this.colours, at.label, px + 10, py - 15, { colour: accent, weight: 620, within: box, taken });
    label(context, this.colours, at.loadLabel, box.left + 4, py + 13, { within: box, taken });
  }
}
