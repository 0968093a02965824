// One figure: uPlot keeps the axes, what stands between them is painted as it is on paper.

import uPlot from "uplot";
import { ink, label } from "./ink.js";
import { band, bars, curve, interval, line, mark, points, upright } from "./shapes.js";

const heightFigures = ["rate", "gaugePressure", "rideFrequency", "effectiveArea"];

const whole = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 1e4, 2e4, 5e4, 1e5, 2e5, 5e5, 1e6], lineOfWords = 15;

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
    const size = { width: this.place.clientWidth, height: this.place.clientHeight }, rows = this.uprightRows(size.width);
    this.nameEnds(size.width);
    const shape = JSON.stringify([size, this.colours.ink, this.colours.paper, chart.x.title, chart.y.title, chart.x.ticks, chart.y.ticks, chart.x.decimals, chart.y.decimals, rows.length, this.margin]);
    if (shape !== this.shape) this.make(shape, size, rows.length);
    else this.plot.batch(() => {
      this.plot.setScale("x", { min: chart.x.low, max: chart.x.high });
      this.plot.setScale("y", { min: chart.y.low, max: chart.y.high });
      this.plot.redraw(false, true);
    });
  }

  make(shape, size, rows) {
    this.plot?.destroy();
    this.shape = shape;
    const { quiet, faint, font } = this.colours;
    const axis = ({ title, ticks, decimals }, size) => ({
      ...(title ? { label: title, labelFont: font(12, 450), labelSize: 20 } : {}), font: font(12, 450), stroke: quiet, size, gap: 4,
      grid: { stroke: faint, width: 1 }, ticks: { show: false },
      ...(ticks ? { splits: () => ticks.map(t => t.at), values: (plot, at) => at.map(v => ticks.find(t => t.at === v)?.label ?? "") }
        : { values: (plot, at) => at.map(v => numbered(v, at)), ...(decimals === 0 ? { incrs: whole } : {}) }),
    });
    const { x, y } = this.chart, across = x.ticks ? { ...x, ticks: this.apart(x, size.width) } : x;
    this.plot = new uPlot({
      ...size, pxAlign: 0, padding: [8 + 17 * rows, Math.max(10, this.margin), 0, 0], legend: { show: false }, cursor: { show: false }, select: { show: false },
      scales: { x: { time: false, range: () => [this.chart.x.low, this.chart.x.high] }, y: { range: () => [this.chart.y.low, this.chart.y.high] } },
      axes: [axis(across, 30), axis(y, y.ticks ? 14 + Math.max(0, ...y.ticks.map(t => this.wide(t.label))) : 46)],
      series: [{}, {}],
      hooks: { draw: [plot => this.over(plot)] },
    }, [[x.low, x.high], [null, null]], this.place);
  }

  // Words of ticks that would touch are left out, the tick stays.
  apart({ ticks, low, high }, width) {
    let end = -Infinity;
    return ticks.map(tick => {
      const at = (tick.at - low) / (high - low) * (width - 70), half = this.wide(tick.label) / 2;
      if (at - half < end + 6) return { ...tick, label: "" };
      end = at + half;
      return tick;
    });
  }

  wide(words) {
    const context = (this.measuring ??= document.createElement("canvas").getContext("2d"));
    context.font = this.colours.font(12, 500);
    return context.measureText(words).width;
  }

  // Names of uprights above the figure, each in the lowest row where it touches no other.
  uprightRows(width) {
    const { x, uprights } = this.chart, rows = [];
    for (const one of uprights.filter(u => u.label && u.x >= x.low && u.x <= x.high).toSorted((a, b) => a.x - b.x)) {
      const at = (one.x - x.low) / (x.high - x.low) * (width - 70), half = this.wide(one.label) / 2;
      let row = rows.findIndex(end => end + 10 < at - half);
      if (row < 0) row = rows.push(0) - 1;
      rows[row] = at + half;
      one.row = row;
    }
    return rows;
  }

  // Curves that end at the right edge are named beside it, in as many lines as the margin asks; several levels among them too.
  nameEnds(width) {
    const { x, curves, limits } = this.chart, most = Math.max(78, width * 0.16), edge = x.high - 0.06 * (x.high - x.low);
    const ending = all => all.length > 1 ? all.filter(c => c.label && c.labelAt >= 0 && c.x[c.labelAt] >= edge) : [];
    const ended = ending(curves);
    this.ends = [...ended, ...ended.length ? ending(limits) : []].map(one => {
      const lines = [];
      for (const word of one.label.split(" ")) {
        const longer = lines.length ? `${lines.at(-1)} ${word}` : word;
        if (lines.length && this.wide(longer) <= most) lines[lines.length - 1] = longer;
        else lines.push(word);
      }
      return { one, lines };
    });
    this.margin = this.ends.length ? 14 + Math.max(...this.ends.flatMap(end => end.lines.map(l => this.wide(l)))) : 0;
  }

  isWanted(limit) {
    return limit.label.startsWith("wanted");
  }

  over(plot) {
    const context = plot.ctx, ratio = devicePixelRatio, { chart, colours } = this;
    context.save();
    context.scale(ratio, ratio);
    context.setLineDash([]);
    const box = { left: plot.bbox.left / ratio, top: plot.bbox.top / ratio, width: plot.bbox.width / ratio, height: plot.bbox.height / ratio };
    box.right = box.left + box.width;
    box.bottom = box.top + box.height;
    const at = { context, colours, box, x: v => plot.valToPos(v, "x") + box.left, y: v => plot.valToPos(v, "y") + box.top };
    const taken = [];
    context.save();
    context.beginPath();
    context.rect(box.left, box.top, box.width, box.height);
    context.clip();
    for (const zone of chart.zones) band(at, zone, colours.faint);
    for (const one of chart.bands) band(at, one, colours.band);
    for (const one of chart.bars) bars(at, one);
    for (const one of chart.uprights) upright(at, one);
    for (const one of chart.limits) curve(at, one.x, one.y, this.isWanted(one) ? colours.accent : colours.quiet, 1.3, [5, 4]);
    for (const one of chart.centres) curve(at, one.x, one.y, colours.quiet, 0.9);
    for (const one of chart.curves) this.curve(at, one);
    context.restore();
    for (const one of chart.measured) points(at, one);
    for (const one of chart.intervals) interval(at, one, taken);
    this.marks(at, taken);
    this.names(at, taken);
    context.restore();
  }

  curve(at, one) {
    const { ink: black, quiet, accent } = this.colours;
    const [colour, width] = { Setting: [accent, 2.2], Beside: [quiet, 1] }[one.kind] ?? [black, 1.9];
    curve(at, one.x, one.y, colour, width);
    curve(at, one.x, one.outside, colour, width * 0.8, [6, 5]);
  }

  // The setting first, then what lies clear of it.
  marks(at, taken) {
    const { context, colours, box } = at, setting = this.chart.marks.find(m => m.kind === "Setting");
    const near = m => setting && Math.hypot(at.x(m.x) - at.x(setting.x), at.y(m.y) - at.y(setting.y)) < 9;
    const shown = this.chart.marks.filter(m => m === setting || !near(m) && at.y(m.y) >= box.top && at.y(m.y) <= box.bottom);
    for (const one of shown) mark(at, one, taken);
    for (const one of shown.toSorted((a, b) => (b === setting) - (a === setting))) {
      const [x, y] = [at.x(one.x), at.y(one.y)], colour = { OverLimit: colours.red, Signal: colours.red, Caution: colours.amber, State: colours.quiet }[one.kind] ?? colours.ink;
      if (one === setting) label(context, colours, one.label, x + 10, y - 16, { colour: colours.accent, weight: 620, within: box, taken });
      else label(context, colours, one.label, x + 9, y + 15, { colour, within: box, taken });
    }
    for (const one of this.chart.intervals.filter(i => i.label)) label(context, colours, one.label, at.x(one.x) + 9, at.y(one.y), { within: box, taken });
  }

  // Names of points, limits, curves and uprights.
  names(at, taken) {
    const { context, colours, box } = at, { chart } = this;
    const say = (words, x, y, colour, more = {}) => words && label(context, colours, words, x, y, { colour, within: box, taken, ...more });
    for (const limit of [...chart.limits, ...chart.centres]) {
      const k = limit.labelAt, y = at.y(limit.y[k]);
      if (k >= 0 && y >= box.top && y <= box.bottom && !this.ends.some(end => end.one === limit)) say(limit.label, box.right - 4, y + 11, this.isWanted(limit) ? colours.accent : colours.quiet, { align: "right" });
    }
    this.endNames(at);
    this.middleNames(at, say);
    const rising = chart.curves.length > 1 && chart.curves[0].y[0] < chart.curves[0].y.at(-1);
    for (const [k, one] of chart.measured.entries()) say(one.label && `• ${one.label}`, rising ? box.left + 4 : box.right - 4, box.top + 12 + 17 * k, colours.quiet, { align: rising ? "left" : "right" });
    for (const one of chart.uprights.filter(u => u.row !== undefined)) {
      const half = this.wide(one.label) / 2 + 4, x = Math.min(Math.max(at.x(one.x), half), this.place.clientWidth - half);
      label(context, colours, one.label, x, box.top - 10 - 17 * one.row, { colour: colours.quiet, align: "center" });
    }
  }

  // Curves that are named at a place of their own: side by side before the first of them, each led back to its place.
  middleNames({ context, colours, box, x, y }, say) {
    const { curves } = this.chart;
    const names = (curves.length > 1 ? curves.filter(c => c.label && c.labelAt >= 0 && !this.ends.some(end => end.one === c)) : [])
      .map(one => ({ one, x: x(one.x[one.labelAt]), y: y(Number.isNaN(one.y[one.labelAt]) ? one.outside[one.labelAt] : one.y[one.labelAt]) }))
      .filter(n => Number.isFinite(n.y)).sort((a, b) => a.y - b.y);
    const right = Math.min(...names.map(n => n.x)) - 44;
    let top = -Infinity;
    for (const name of names) {
      top = Math.min(Math.max(name.y, top + 18, box.top + 9), box.bottom - 9);
      if (right - this.wide(name.one.label) < box.left) { say(name.one.label, name.x + 8, top, this.colourOf(name.one)); continue; }
      context.strokeStyle = colours.rule;
      context.lineWidth = 1;
      line(context, right + 4, top, name.x, name.y);
      say(name.one.label, right, top, this.colourOf(name.one), { align: "right" });
    }
  }

  colourOf({ kind }) {
    return { Setting: this.colours.accent, Beside: this.colours.quiet }[kind] ?? this.colours.ink;
  }

  // Names that would touch are pushed apart and lead back to their curves.
  endNames({ context, colours, box, x, y }) {
    const names = this.ends.map(({ one, lines }) => {
      const k = one.labelAt, at = y(Number.isNaN(one.y[k]) ? one.outside[k] : one.y[k]);
      return { one, lines, from: x(one.x[k]), at, height: lines.length * lineOfWords };
    }).filter(n => n.at >= box.top - 1 && n.at <= box.bottom + 1).sort((a, b) => a.at - b.at);
    for (const [k, name] of names.entries()) name.top = Math.max(name.at - name.height / 2, k ? names[k - 1].top + names[k - 1].height : -Infinity);
    let floor = box.bottom + lineOfWords / 2;
    for (const name of names.toReversed()) floor = name.top = Math.min(name.top, floor - name.height);
    context.textAlign = "left";
    context.textBaseline = "middle";
    for (const { one, lines, from, at, top, height } of names) {
      context.strokeStyle = colours.rule;
      context.lineWidth = 1;
      if (Math.abs(top + height / 2 - at) > 2) line(context, Math.min(from + 2, box.right), at, box.right + 7, top + height / 2);
      context.fillStyle = this.chart.limits.includes(one) ? colours.quiet : this.colourOf(one);
      context.font = colours.font(12, one.kind === "Setting" ? 620 : 500);
      for (const [k, words] of lines.entries()) context.fillText(words, box.right + 9, top + (k + 0.5) * lineOfWords);
    }
  }
}

// As many decimals as the ticks differ by, a true minus, thousands apart.
function numbered(value, all) {
  const step = all.length > 1 ? all[1] - all[0] : 1, least = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const decimals = Math.abs(Number(step.toFixed(least)) - step) > 1e-6 * step ? least + 1 : least;
  const [digits, rest] = Math.abs(value).toFixed(Math.min(decimals, 9)).split(".");
  const apart = digits.length > 4 ? digits.replace(/\B(?=(\d{3})+$)/g, "\u00a0") : digits;
  return `${value < -1e-12 ? "\u2212" : ""}${apart}${rest ? "." + rest : ""}`;
}
