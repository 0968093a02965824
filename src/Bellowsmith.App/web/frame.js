// A frame is the length of a JSON text, the text, and behind it every array as 32-bit floats. The text names an array by where
// it begins and how many numbers it has.

const text = new TextDecoder();

export function read(bytes) {
  const length = new DataView(bytes.buffer, bytes.byteOffset).getInt32(0, true);
  const frame = JSON.parse(text.decode(bytes.subarray(4, 4 + length)));
  const numbers = new Float32Array(bytes.slice(4 + length).buffer);
  const array = ([start, count]) => numbers.subarray(start, start + count);
  const arrays = (parts, ...keys) => { for (const part of parts) for (const key of keys) part[key] = array(part[key]); };
  for (const chart of Object.values(frame.charts)) {
    arrays([...chart.curves, ...chart.limits, ...chart.centres], "x", "y", "outside");
    arrays([...chart.bands, ...chart.zones], "x", "low", "high");
    arrays(chart.bars, "edges", "heights");
    arrays(chart.measured, "x", "y");
  }
  if (frame.corner) arrays([frame.corner], "road", "body", "wheel", "stopForce", "tyreForce");
  if (frame.settings) {
    arrays([frame.settings], "values", "reasons");
    arrays([frame.settings.x, frame.settings.y], "values", "edges");
    arrays(frame.settings.lines, "x", "y");
    arrays(frame.settings.patches, "cells");
  }
  if (frame.map) frame.map.rate = array(frame.map.rate);
  return frame;
}
