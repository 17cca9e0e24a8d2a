/**
 * Tensile strength in MPa for a Vickers hardness, unalloyed and low-alloy steel, ISO 18265 table A.1, straight lines
 * between rows (below 200 and from 480 HV from memory). Undefined outside 150 to 520 HV. The standard itself calls
 * this the least reliable of its conversions.
 */
export function tensileOfHardness(hv: number): number | undefined {
  const above = iso18265.findIndex(([rowHv]) => rowHv >= hv);
  const right = iso18265[above];
  const left = iso18265[above - 1];
  if (right === undefined) return undefined;
  if (right[0] === hv) return right[1];
  if (left === undefined) return undefined;
  return left[1] + ((right[1] - left[1]) * (hv - left[0])) / (right[0] - left[0]);
}

/** The same rows the other way round; undefined outside 480 to 1700 MPa. */
export function hardnessOfTensile(tensileMpa: number): number | undefined {
  const above = iso18265.findIndex(([, rowMpa]) => rowMpa >= tensileMpa);
  const right = iso18265[above];
  const left = iso18265[above - 1];
  if (right === undefined) return undefined;
  if (right[1] === tensileMpa) return right[0];
  if (left === undefined) return undefined;
  return left[0] + ((right[0] - left[0]) * (tensileMpa - left[1])) / (right[1] - left[1]);
}

const iso18265: readonly (readonly [hv: number, mpa: number])[] = [
  [150, 480],
  [160, 510],
  [170, 545],
  [180, 575],
  [190, 610],
  [200, 640],
  [220, 705],
  [250, 800],
  [280, 900],
  [300, 965],
  [320, 1030],
  [340, 1095],
  [360, 1155],
  [380, 1220],
  [400, 1290],
  [420, 1350],
  [440, 1420],
  [460, 1485],
  [480, 1555],
  [500, 1630],
  [520, 1700],
];
