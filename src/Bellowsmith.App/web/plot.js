// One figure of curves: uPlot keeps axes and lines, what it has no word for is painted over it.

import uPlot from "uplot";
import { ink, label } from "./ink.js";

const heightFigures = ["rate", "gaugePressure", "rideFrequency", "effectiveArea"];

export class Plot {
  constructor(place, id) {
    this.place = place;
    this.alongHeight = heightFigures.includes(id);
  }

  heightAt(clientX) {
    const over = this.plot.over.getBoundingClientRect();
    return this.plot.posToVal(Math.min(Math.max(clientX - over.left, 0), over.width), "x");
  }

  paint(chart) {
    this.chart = chart;
    this.colours = ink(this.place);
    const size = { width: this.place.clientWidth, height: this.place.clientHeight };
    const shape = JSON.stringify([size, this.colours.ink, this.colours.paper, chart.x.title, chart.y.title, chart.bands.length, chart.limits.length]);
    if (shape !== this.shape) this.make(shape, size);
    else this.plot.batch(() => {
      this.plot.setData(this.data(), false);
      this.plot.setScale("x", { min: chart.x.low, max: chart.x.high });
      this.plot.setScale("y", { min: chart.y.low, max: chart.y.high });
    });
  }

  data() {
    const { curves, bands, limits } = this.chart, none = [...curves[0].x].map(() => null);
    const real = values => Array.from(values, v => Number.isNaN(v) ? null : v);
    return [
      Array.from(curves[0].x),
      bands[0] ? real(bands[0].high) : none, bands[0] ? real(bands[0].low) : none,
      real(curves[0].y), real(curves[0].outside), limits[0] ? real(limits[0].y) : none,
    ];
  }

  make(shape, size) {
    this.plot?.destroy();
    this.shape = shape;
    const { ink: black, quiet, faint, accent, band, font } = this.colours;
    const plain = { points: { show: false }, spanGaps: false };
    const axis = (title, extra) => ({
      label: title, labelFont: font(12, 450), font: font(12, 450), stroke: quiet, labelSize: 20, gap: 4,
      grid: { stroke: faint, width: 1 }, ticks: { show: false }, ...extra,
    });
    this.plot = new uPlot({
      ...size, pxAlign: 0, padding: [8, 10, 0, 0], legend: { show: false }, cursor: { show: false }, select: { show: false },
      scales: { x: { time: false, range: () => [this.chart.x.low, this.chart.x.high] }, y: { range: () => [this.chart.y.low, this.chart.y.high] } },
      axes: [axis(this.chart.x.title, { size: 30 }), axis(this.chart.y.title, { size: 46 })],
      series: [
        {}, { ...plain, width: 0 }, { ...plain, width: 0 },
        { ...plain, stroke: black, width: 1.9 }, { ...plain, stroke: black, width: 1.5, dash: [6, 5] },
        { ...plain, stroke: this.isWanted() ? accent : quiet, width: 1.3, dash: [5, 4] },
      ],
      bands: [{ series: [1, 2], fill: band }],
      hooks: { draw: [plot => this.over(plot)] },
    }, this.data(), this.place);
  }

  isWanted() {
    return this.chart.limits[0]?.label.startsWith("wanted");
  }

  // Measured rows, marks and labels.
  over(plot) {
    const context = plot.ctx, ratio = devicePixelRatio;
    context.save();
    context.scale(ratio, ratio);
    context.setLineDash([]);
    const box = { left: plot.bbox.left / ratio, top: plot.bbox.top / ratio, width: plot.bbox.width / ratio, height: plot.bbox.height / ratio };
    const x = v => plot.valToPos(v, "x") + box.left, y = v => plot.valToPos(v, "y") + box.top;
    const taken = [];
    this.measured(context, x, y, box);
    this.marks(context, x, y, box, taken);
    this.limits(context, x, y, box, taken);
    context.restore();
  }

  measured(context, x, y, box) {
    context.fillStyle = this.colours.quiet;
    context.globalAlpha = 0.5;
    for (const points of this.chart.measured)
      for (let k = 0; k < points.x.length; k++) {
        const top = y(points.y[k]);
        if (top < box.top || top > box.top + box.height) continue;
        context.beginPath();
        context.arc(x(points.x[k]), top, 1.6, 0, 7);
        context.fill();
      }
    context.globalAlpha = 1;
  }

  marks(context, x, y, box, taken) {
    const { accent, ink: black, quiet, red, paper } = this.colours;
    const setting = this.chart.marks.find(m => m.kind === "Setting");
    const near = m => setting && Math.hypot(x(m.x) - x(setting.x), y(m.y) - y(setting.y)) < 9;
    if (setting) {
      const at = [x(setting.x), y(setting.y)];
      context.strokeStyle = accent;
      context.lineWidth = 1.3;
      line(context, at[0], Math.min(at[1], box.top + box.height), at[0], box.top + box.height);
      dot(context, ...at, 5.5, accent, paper);
      taken.push({ left: at[0] - 7, right: at[0] + 7, top: at[1] - 7, bottom: at[1] + 7 });
      label(context, this.colours, setting.label, at[0] + 10, at[1] - 16, { colour: accent, weight: 620, within: box, taken });
    }
    for (const mark of this.chart.marks.filter(m => m !== setting && !near(m))) {
      const colour = mark.kind === "OverLimit" ? red : black, at = [x(mark.x), y(mark.y)];
      if (at[1] < box.top || at[1] > box.top + box.height) continue;
      ring(context, ...at, 4.5, colour, paper);
      taken.push({ left: at[0] - 6, right: at[0] + 6, top: at[1] - 6, bottom: at[1] + 6 });
      label(context, this.colours, mark.label, at[0] + 9, at[1] + 15, { colour: mark.kind === "State" ? quiet : colour, within: box, taken });
    }
    if (this.chart.measured[0]) label(context, this.colours, this.chart.measured[0].label, box.left + box.width - 4, box.top + 12, { colour: quiet, align: "right", within: box, taken });
  }

  limits(context, x, y, box, taken) {
    for (const limit of this.chart.limits) {
      const at = limit.labelAt, top = y(limit.y[at]);
      if (at < 0 || !(top >= box.top && top <= box.top + box.height)) continue;
      label(context, this.colours, limit.label, box.left + box.width - 4, top + 11, { colour: this.isWanted() ? this.colours.accent : this.colours.quiet, align: "right", within: box, taken });
    }
  }
}

export function line(context, x1, y1, x2, y2) {
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
}

export function dot(context, x, y, radius, colour, paper) {
  context.beginPath();
  context.arc(x, y, radius, 0, 7);
  context.fillStyle = colour;
  context.fill();
  context.lineWidth = 1.6;
  context.strokeStyle = paper;
  context.stroke();
}

function ring(context, x, y, radius, colour, paper) {
  context.beginPath();
  context.arc(x, y, radius, 0, 7);
  context.fillStyle = paper;
  context.fill();
  context.lineWidth = 1.6;
  context.strokeStyle = colour;
  context.stroke();
}
