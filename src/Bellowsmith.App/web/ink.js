// Colours and letters of the style sheet, for what is painted on a canvas.

export function ink(place) {
  const style = getComputedStyle(place);
  const colour = name => style.getPropertyValue(`--${name}`).trim();
  return {
    paper: colour("paper"), ink: colour("ink"), quiet: colour("quiet"), rule: colour("rule"), faint: colour("faint"),
    rubber: colour("rubber"), stop: colour("stop"), accent: colour("accent"), amber: colour("amber"), red: colour("red"), band: colour("band"),
    font: (size, weight = 450) => `${weight} ${size}px ${style.fontFamily}`,
  };
}

// Words with a little paper around them, kept inside the figure and clear of what stands there already.
export function label(context, colours, text, x, y, { colour = colours.ink, align = "left", size = 12, weight = 500, within, taken = [] } = {}) {
  context.font = colours.font(size, weight);
  context.textBaseline = "middle";
  const width = context.measureText(text).width, height = size + 5;
  let left = align === "left" ? x : align === "right" ? x - width : x - width / 2;
  if (within) left = Math.min(Math.max(left, within.left + 3), within.left + within.width - width - 3);
  const box = at => ({ left: left - 3, right: left + width + 3, top: at - height / 2, bottom: at + height / 2 });
  const clear = at => !taken.some(other => { const b = box(at); return b.left < other.right && other.left < b.right && b.top < other.bottom && other.top < b.bottom; });
  const inside = at => !within || (at - height / 2 >= within.top && at + height / 2 <= within.top + within.height);
  const offsets = [0, -16, 16, -32, 32, -48, 48, -64, 64];
  const offset = offsets.find(by => inside(y + by) && clear(y + by));
  if (offset === undefined) return false;
  const at = y + offset, place = box(at);
  context.save();
  context.globalAlpha = 0.86;
  context.fillStyle = colours.paper;
  context.fillRect(place.left, place.top, place.right - place.left, place.bottom - place.top);
  context.restore();
  context.fillStyle = colour;
  context.textAlign = "left";
  context.fillText(text, left, at);
  taken.push(place);
  return true;
}
