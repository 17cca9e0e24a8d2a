/**
 * Hardness beside tensile strength: rows of ISO 18265:2013, table A.1 (unalloyed and low-alloy steel, cast steel), up to 470 HV read
 * in a public copy of its predecessor DIN 50150, above from memory:
 * tensile strength in MPa, Vickers, Brinell (0.95 of Vickers), Rockwell C where the scale applies.
 */
const rows: readonly (readonly [tensileMpa: number, vickers: number, rockwellC?: number])[] = [
  ...([
    [255, 80],
    [270, 85],
    [285, 90],
    [305, 95],
    [320, 100],
    [350, 110],
    [385, 120],
    [415, 130],
  ] as const),
  ...([
    [450, 140],
    [480, 150],
    [510, 160],
    [545, 170],
    [575, 180],
    [610, 190],
    [640, 200],
  ] as const),
  ...([
    [675, 210],
    [705, 220],
    [740, 230],
  ] as const),
  ...([
    [770, 240, 20.3],
    [800, 250, 22.2],
    [835, 260, 24],
    [865, 270, 25.6],
    [900, 280, 27.1],
  ] as const),
  ...([
    [930, 290, 28.5],
    [965, 300, 29.8],
    [995, 310, 31],
    [1030, 320, 32.2],
    [1060, 330, 33.3],
  ] as const),
  ...([
    [1095, 340, 34.4],
    [1125, 350, 35.5],
    [1155, 360, 36.6],
    [1190, 370, 37.7],
  ] as const),
  ...([
    [1220, 380, 38.8],
    [1255, 390, 39.8],
    [1290, 400, 40.8],
    [1320, 410, 41.8],
  ] as const),
  ...([
    [1350, 420, 42.7],
    [1385, 430, 43.6],
    [1420, 440, 44.5],
    [1455, 450, 45.3],
  ] as const),
  ...([
    [1485, 460, 46.1],
    [1520, 470, 46.9],
    [1555, 480, 47.7],
    [1595, 490, 48.4],
  ] as const),
  ...([
    [1630, 500, 49.1],
    [1665, 510, 49.8],
    [1700, 520, 50.5],
    [1740, 530, 51.1],
  ] as const),
  ...([
    [1775, 540, 51.7],
    [1810, 550, 52.3],
    [1845, 560, 53],
    [1880, 570, 53.6],
  ] as const),
  ...([
    [1920, 580, 54.1],
    [1955, 590, 54.7],
    [1995, 600, 55.2],
    [2030, 610, 55.7],
  ] as const),
  ...([
    [2070, 620, 56.3],
    [2105, 630, 56.8],
    [2145, 640, 57.3],
    [2180, 650, 57.8],
  ] as const),
];

export type HardnessScale = 'vickers' | 'brinell' | 'rockwell_c';

export interface Hardness {
  /** HV 10 or more. */
  readonly vickers: number;
  /** HBW, from Vickers; the standard's table ends at 450 HV for it. */
  readonly brinell?: number;
  /** HRC; the scale begins at 20. */
  readonly rockwell_c?: number;
}

/** The share of Vickers that Brinell has in the standard's table. */
const brinellOfVickers = 0.95;

/** The standard's table gives Brinell up to here. */
const brinellUpToVickers = 450;

/**
 * Hardness that goes with a tensile strength in MPa, interpolated and rounded; undefined outside the table (255 to 2180 MPa).
 * Approximate: the standard warns that tensile strength is its least reliable conversion.
 */
export function hardnessOfTensile(tensileMpa: number): Hardness | undefined {
  const above = rows.findIndex(([mpa]) => mpa >= tensileMpa);
  const upper = rows[above];
  const lower = rows[Math.max(0, above - 1)];
  if (upper === undefined || lower === undefined || tensileMpa < (rows[0]?.[0] ?? Infinity)) return undefined;
  const share = upper === lower ? 0 : (tensileMpa - lower[0]) / (upper[0] - lower[0]);
  const between = (a: number, b: number): number => a + share * (b - a);
  const vickers = Math.round(between(lower[1], upper[1]));
  const [, , rockwellBelow = share === 1 ? upper[2] : undefined] = lower;
  const rockwell =
    rockwellBelow === undefined || upper[2] === undefined ? undefined : between(rockwellBelow, upper[2]);
  return {
    vickers,
    ...(vickers > brinellUpToVickers ? {} : { brinell: Math.round(brinellOfVickers * vickers) }),
    ...(rockwell === undefined ? {} : { rockwell_c: Math.round(rockwell) }),
  };
}

/** First row of Rockwell C in the table. */
const rockwellFrom = 20.3;

/**
 * Tensile strength in MPa that goes with a hardness, interpolated and rounded; undefined outside the table (80 to 650 HV, Brinell up to
 * 428, Rockwell C from 20.3). As approximate as the other way.
 */
export function tensileOfHardness(scale: HardnessScale, hardness: number): number | undefined {
  if (scale === 'brinell' && hardness > brinellUpToVickers * brinellOfVickers + 0.5) return undefined;
  const at = ([, vickers, rockwell]: (typeof rows)[number]): number =>
    scale === 'rockwell_c'
      ? (rockwell ?? Number.NaN)
      : scale === 'brinell'
        ? brinellOfVickers * vickers
        : vickers;
  // Whole numbers are read off a gauge: the scale of Rockwell begins at 20, its first row is 20.3.
  const read = scale === 'rockwell_c' && hardness >= 20 ? Math.max(hardness, rockwellFrom) : hardness;
  const above = rows.findIndex((row) => at(row) >= read);
  const upper = rows[above];
  const lower = rows[Math.max(0, above - 1)];
  if (upper === undefined || lower === undefined) return undefined;
  const [low, high] = [at(lower), at(upper)];
  if (read === high) return upper[0];
  if (Number.isNaN(low) || read < low) return undefined;
  return Math.round(lower[0] + ((read - low) / (high - low)) * (upper[0] - lower[0]));
}
