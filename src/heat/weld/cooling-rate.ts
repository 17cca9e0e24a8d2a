import { firstOutside } from '../outside.ts';

/** One pass, at the centre line. */
export interface CoolingCase {
  /** Net heat input (after the process efficiency), J per mm of seam. */
  readonly heatInputJPerMm: number;
  readonly thicknessMm: number;
  /** Temperature at which the rate is asked for. */
  readonly atCelsius: number;
  readonly ambientCelsius?: number;
  /** W/(m·K) at about that temperature; 28 (steel, hot) when absent. */
  readonly conductivity?: number;
  /** Density times specific heat, J/(mm³·K); 0.0044 (steel) when absent. */
  readonly joulePerMm3K?: number;
}

export type CoolingRate =
  | {
      readonly ok: true;
      /** Between 0.6 and 0.9 of relative thickness neither holds: the faster, which hardens more. */
      readonly kelvinPerSecond: number;
      readonly regime: 'thin' | 'thick' | 'between';
      readonly relativeThickness: number;
      readonly thinKelvinPerSecond: number;
      readonly thickKelvinPerSecond: number;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Cooling rate on the centre line of a pass (Rosenthal's solution, as in the Welding Handbook, from memory):
 * thin 2πk·ρc·(d/Q)²·(Tc − T0)³, thick 2πk·(Tc − T0)²/Q. The relative thickness d·√(ρc·(Tc − T0)/Q) tells which:
 * above 0.9 thick, below 0.6 thin.
 *
 * Constant properties, no loss from the faces: bare sheet cools faster than this.
 */
export function coolingRate(pass: CoolingCase): CoolingRate {
  const { heatInputJPerMm, thicknessMm, atCelsius, ambientCelsius = 20 } = pass;
  const { conductivity = 28, joulePerMm3K = 0.0044 } = pass;
  const off = firstOutside([
    ['thickness', thicknessMm, 0.4, 100, 'mm'],
    ['heat input', heatInputJPerMm, 20, 10000, 'J/mm'],
    ['temperature before the pass', ambientCelsius, -30, 300, '°C'],
    ['temperature of the rate', atCelsius, ambientCelsius + 50, 1400, '°C'],
    ['conductivity', conductivity, 5, 300, 'W/(m·K)'],
    ['density times specific heat', joulePerMm3K, 0.001, 0.01, 'J/(mm³·K)'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  const rise = atCelsius - ambientCelsius;
  const perMmK = conductivity / 1000;
  const thin = 2 * Math.PI * perMmK * joulePerMm3K * (thicknessMm / heatInputJPerMm) ** 2 * rise ** 3;
  const thick = (2 * Math.PI * perMmK * rise ** 2) / heatInputJPerMm;
  const relativeThickness = thicknessMm * Math.sqrt((joulePerMm3K * rise) / heatInputJPerMm);
  const regime = relativeThickness > 0.9 ? 'thick' : relativeThickness < 0.6 ? 'thin' : 'between';
  const governing = { thin, thick, between: Math.max(thin, thick) };
  return {
    ok: true,
    kelvinPerSecond: governing[regime],
    regime,
    relativeThickness,
    thinKelvinPerSecond: thin,
    thickKelvinPerSecond: thick,
  };
}
