// Lines of one value through a grid, in columns and rows: polygons of the contour without their stretches along the edge or along
// cells that have no value.

import { contours } from "d3-contour";

export function lines(values, columns, rows, level) {
  const shape = contours().size([columns, rows]).thresholds([level])(Array.from(values, v => Number.isNaN(v) ? null : v))[0], runs = [];
  const known = (gx, gy) => {
    for (const c of [Math.floor(gx - 0.5), Math.ceil(gx - 0.5)])
      for (const r of [Math.floor(gy - 0.5), Math.ceil(gy - 0.5)])
        if (c < 0 || r < 0 || c >= columns || r >= rows || Number.isNaN(values[r * columns + c])) return false;
    return true;
  };
  for (const polygon of shape.coordinates)
    for (const ring of polygon) {
      let run = [];
      for (const [gx, gy] of ring) {
        if (known(gx, gy)) { run.push([gx - 0.5, gy - 0.5]); continue; }
        if (run.length > 1) runs.push(run);
        run = [];
      }
      if (run.length > 1) runs.push(run);
    }
  return runs;
}
