/** Numbers of an arc weld pass as a plan states them. */
export interface ArcPass {
  readonly volts: number;
  readonly amperes: number;
  readonly speedMmPerSecond: number;
}

export type ArcProcess = keyof typeof efficiencies;

export type HeatInput =
  { readonly ok: true; readonly joulePerMm: number } | { readonly ok: false; readonly reason: string };

export interface AdamsCase {
  /** Net heat input (after the process efficiency), J per mm of seam. */
  readonly heatInputJPerMm: number;
  readonly thicknessMm: number;
  /** From the edge of the fused metal. */
  readonly distanceMm: number;
  readonly metal: 'steel' | 'aluminium';
  /** Temperature of the sheet before the pass; 20 when absent. */
  readonly ambientCelsius?: number;
  /** From the edge of the fused metal to a free edge beside the seam. Absent: far away. */
  readonly freeEndMm?: number;
}

export type AdamsPeak =
  { readonly ok: true; readonly peakCelsius: number } | { readonly ok: false; readonly reason: string };

/**
 * Arc energy U·I/v in J/mm, before any efficiency (ISO/TR 18491, from memory). With pulsed current the product of
 * two mean values is not the mean power; then the machine's own energy reading counts.
 */
export function arcEnergy(pass: ArcPass): HeatInput {
  const off = firstOutside([
    ['voltage', pass.volts, 5, 60, 'V'],
    ['current', pass.amperes, 5, 600, 'A'],
    ['travel speed', pass.speedMmPerSecond, 0.5, 200, 'mm/s'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  return { ok: true, joulePerMm: (pass.volts * pass.amperes) / pass.speedMmPerSecond };
}

/**
 * Net heat input k·U·I/v in J/mm, with the thermal efficiency k of EN 1011-1 (table from memory; plasma too). MIG
 * brazing counts as MIG: common practice, no source. Measured efficiencies lie within about 10 % of these.
 */
export function heatInput(pass: ArcPass & { readonly process: ArcProcess }): HeatInput {
  const energy = arcEnergy(pass);
  if (!energy.ok) return energy;
  return { ok: true, joulePerMm: efficiencies[pass.process] * energy.joulePerMm };
}

const efficiencies = {
  'submerged arc': 1,
  'manual metal arc': 0.8,
  'MIG or MAG': 0.8,
  'flux-cored': 0.8,
  'MIG brazing': 0.8,
  TIG: 0.6,
  plasma: 0.6,
} as const;

/**
 * Net heat input when the plan is silent: 200 J/mm for each mm of sheet. Ordinary settings for body sheet (16 V 60 A
 * at 8 mm/s on 0.8 mm, up to 19 V 140 A at 7 mm/s on 3 mm) come to 101 to 127, so this is about half as much
 * again as the hottest of them and also covers TIG at 11 V 60 A 2.5 mm/s on 1 mm (158). No standard states it.
 */
export function assumedHeatInput(thicknessMm: number): HeatInput {
  const off = firstOutside([['thickness', thicknessMm, ...thicknessRange, 'mm']]);
  return off === undefined ? { ok: true, joulePerMm: 200 * thicknessMm } : { ok: false, reason: off };
}

/**
 * Peak temperature beside one full-penetration pass in thin sheet by C. M. Adams (1958), as in the Welding Handbook,
 * volume 1: 1/(Tp − T0) = √(2πe)·ρc·d·y/Q + 1/(Tm − T0).
 *
 * It takes a fast source and no loss from the faces, so it is an upper bound, clearly so beyond about 30 mm. A free
 * edge mirrors the heat: the rise that would have reached its mirror image is added at full height although the two
 * do not peak together, which errs high as well. Not covered: a seam on the very edge (all heat runs to one side),
 * several passes without cooling between (state the warmer sheet as ambient), resistance spots.
 *
 * Range: sheet 0.4 to 6 mm, 30 to 1000 J/mm for each mm of sheet. With less no seam melts through, so a smaller
 * number is a slip, and would come out as a cool neighbour.
 */
export function adamsPeakCelsius(weld: AdamsCase): AdamsPeak {
  const { heatInputJPerMm, thicknessMm, distanceMm, freeEndMm, metal, ambientCelsius = 20 } = weld;
  const off = firstOutside([
    ['thickness', thicknessMm, ...thicknessRange, 'mm'],
    ['heat input for each mm of sheet', heatInputJPerMm / thicknessMm, 30, 1000, 'J/mm'],
    ['temperature before the pass', ambientCelsius, -30, 250, '°C'],
    ['distance to the free edge', freeEndMm ?? 1, 0, 20000, 'mm'],
    ['distance', distanceMm, 0, freeEndMm ?? 20000, 'mm'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  const { meltCelsius, joulePerMm3K } = fused[metal];
  const most = meltCelsius - ambientCelsius;
  const riseAt = (mm: number): number =>
    1 / ((Math.sqrt(2 * Math.PI * Math.E) * joulePerMm3K * thicknessMm * mm) / heatInputJPerMm + 1 / most);
  const mirrored = freeEndMm === undefined ? 0 : riseAt(2 * freeEndMm - distanceMm);
  return { ok: true, peakCelsius: ambientCelsius + Math.min(most, riseAt(distanceMm) + mirrored) };
}

// Steel: figures of the worked example in the Welding Handbook (from memory). Aluminium: the upper end of the melting
// range of 6082, and density times specific heat of EN 1999-1-2 below 100 °C; its mean up to melting is a tenth
// higher, so this errs high.
const fused = {
  steel: { meltCelsius: 1510, joulePerMm3K: 0.0044 },
  aluminium: { meltCelsius: 650, joulePerMm3K: 0.0025 },
} as const;

const thicknessRange = [0.4, 6] as const;

type Bound = readonly [what: string, value: number, least: number, most: number, unit: string];

function firstOutside(bounds: readonly Bound[]): string | undefined {
  const off = bounds.find(([, value, least, most]) => !(value >= least && value <= most));
  if (!off) return undefined;
  const [what, value, least, most, unit] = off;
  return `${what} ${value} ${unit} is outside what can be computed: ${least} to ${most} ${unit}`;
}
