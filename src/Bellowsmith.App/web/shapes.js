// What stands between a figure's axes, each shape as it is drawn on paper. at: the canvas, its colours, the box, and where
// values stand in it.

export function line(context, x1, y1, x2, y2) {
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
}

export function curve({ context, x, y }, across, up, colour, width, dashes = []) {
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.lineJoin = "round";
  context.setLineDash(dashes);
  context.beginPath();
  let down = false;
  for (let k = 0; k < across.length; k++) {
    if (!Number.isFinite(up[k])) { down = false; continue; }
    if (down) context.lineTo(x(across[k]), y(up[k]));
    else context.moveTo(x(across[k]), y(up[k]));
    down = true;
  }
  context.stroke();
  context.setLineDash([]);
}

export function band({ context, x, y }, { x: across, low, high }, colour) {
  const known = [...across.keys()].filter(k => Number.isFinite(low[k]) && Number.isFinite(high[k]));
  context.fillStyle = colour;
  context.beginPath();
  for (const k of known) context.lineTo(x(across[k]), y(high[k]));
  for (const k of known.reverse()) context.lineTo(x(across[k]), y(low[k]));
  context.fill();
}

export function bars({ context, colours, box, x, y }, { edges, heights, outside }) {
  context.fillStyle = colours.band;
  context.strokeStyle = colours.quiet;
  context.lineWidth = 0.8;
  context.setLineDash(outside ? [3, 2] : []);
  for (let k = 0; k < heights.length; k++) {
    if (!(heights[k] > 0)) continue;
    const shape = [x(edges[k]), y(heights[k]), x(edges[k + 1]) - x(edges[k]), box.bottom - y(heights[k])];
    if (!outside) context.fillRect(...shape);
    context.strokeRect(...shape);
  }
  context.setLineDash([]);
}

export function upright({ context, colours, box, x }, { kind, x: at }) {
  context.strokeStyle = colours.quiet;
  context.lineWidth = kind === "Centre" ? 0.9 : 1.1;
  context.setLineDash({ Phase: [10, 3, 2, 3], Limit: [5, 4] }[kind] ?? []);
  line(context, x(at), box.top, x(at), box.bottom);
  context.setLineDash([]);
}

export function points({ context, colours, box, x, y }, { x: across, y: up, shape, joined }) {
  if (joined) curve({ context, x, y }, across, up, colours.quiet, 0.8);
  context.fillStyle = context.strokeStyle = colours.quiet;
  context.lineWidth = 1.2;
  const few = across.length < 20, radius = few ? 3.4 : 1.6;
  context.globalAlpha = few ? 1 : 0.5;
  for (let k = 0; k < across.length; k++) {
    const top = y(up[k]);
    if (top >= box.top && top <= box.bottom) point(context, shape, x(across[k]), top, radius, colours.paper);
  }
  context.globalAlpha = 1;
}

function point(context, shape, x, y, r, paper) {
  context.beginPath();
  if (shape === "Cross") {
    for (const to of [1, -1]) { context.moveTo(x - r, y - to * r); context.lineTo(x + r, y + to * r); }
    context.stroke();
  } else if (shape === "Square") context.fillRect(x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
  else if (shape === "Triangle") polygon(context, [[x, y - 1.2 * r], [x + 1.1 * r, y + 0.8 * r], [x - 1.1 * r, y + 0.8 * r]], paper, context.strokeStyle);
  else if (shape === "Ring") disc(context, x, y, r, paper, context.strokeStyle, 1.2);
  else {
    context.arc(x, y, r, 0, 7);
    context.fill();
  }
}

export function interval({ context, colours, box, x, y }, { x: at, low, y: value, high, kind }, taken) {
  const colour = { Signal: colours.red, Caution: colours.amber }[kind] ?? colours.ink, px = x(at);
  context.strokeStyle = colour;
  context.lineWidth = 1.4;
  if (low !== null && high !== null) {
    const [bottom, top] = [Math.min(y(low), box.bottom), Math.max(y(high), box.top)];
    line(context, px, bottom, px, top);
    for (const end of [bottom, top]) line(context, px - 4, end, px + 4, end);
    taken.push({ left: px - 5, right: px + 5, top, bottom });
  }
  disc(context, px, y(value), 2.6, colours.paper, colour, 1.4);
}

export function mark({ context, colours, box, x, y }, { kind, x: across, y: up }, taken) {
  const { accent, ink: black, red, amber, paper } = colours, px = x(across), py = y(up);
  if (kind === "Setting") {
    context.strokeStyle = accent;
    context.lineWidth = 1.3;
    line(context, px, Math.min(py, box.bottom), px, box.bottom);
    disc(context, px, py, 5.5, accent, paper);
  } else if (kind === "Signal") polygon(context, [[px, py - 6], [px + 6, py], [px, py + 6], [px - 6, py]], red, paper);
  else if (kind === "Caution") polygon(context, [[px, py - 6], [px + 6, py + 4.5], [px - 6, py + 4.5]], paper, amber);
  else disc(context, px, py, 4.5, paper, kind === "OverLimit" ? red : black);
  const reach = kind === "Setting" ? 7 : 6;
  taken.push({ left: px - reach, right: px + reach, top: py - reach, bottom: py + reach });
}

function polygon(context, corners, fill, stroke) {
  context.beginPath();
  for (const corner of corners) context.lineTo(...corner);
  context.closePath();
  filled(context, fill, stroke, 1.6);
}

export function disc(context, x, y, radius, fill, stroke, width = 1.6) {
  context.beginPath();
  context.arc(x, y, radius, 0, 7);
  filled(context, fill, stroke, width);
}

function filled(context, fill, stroke, width) {
  context.fillStyle = fill;
  context.fill();
  context.lineWidth = width;
  context.strokeStyle = stroke;
  context.stroke();
}

// Round numbers along an axis.
export function ticks({ low, high }, most = 8) {
  const rough = (high - low) / most, power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map(s => s * power).find(s => s >= rough), found = [];
  for (let k = Math.ceil(low / step); k * step <= high; k++) found.push(Number((k * step).toPrecision(6)));
  return found;
}
