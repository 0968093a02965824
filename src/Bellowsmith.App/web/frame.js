// A frame is the length of a JSON text, the text, and behind it every array as 32-bit floats. The text names an array by where
// it begins and how many numbers it has.

const text = new TextDecoder();

export function read(bytes) {
  const length = new DataView(bytes.buffer, bytes.byteOffset).getInt32(0, true);
  const frame = JSON.parse(text.decode(bytes.subarray(4, 4 + length)));
  const numbers = new Float32Array(bytes.slice(4 + length).buffer);
  const array = ([start, count]) => numbers.subarray(start, start + count);
  for (const chart of Object.values(frame.charts)) {
    for (const curve of [...chart.curves, ...chart.limits]) for (const key of ["x", "y", "outside"]) curve[key] = array(curve[key]);
    for (const band of chart.bands) for (const key of ["x", "low", "high"]) band[key] = array(band[key]);
    for (const points of chart.measured) for (const key of ["x", "y"]) points[key] = array(points[key]);
  }
  if (frame.corner) for (const key of ["road", "body", "wheel", "stopForce", "tyreForce"]) frame.corner[key] = array(frame.corner[key]);
  if (frame.map) frame.map.rate = array(frame.map.rate);
  return frame;
}
