import type { Composition } from './composition.ts';

export interface CarbonEquivalents {
  /** International Institute of Welding; EN 1011-2, method A. */
  readonly ce: number;
  /** EN 1011-2, method B. */
  readonly cet: number;
  /** Ito and Bessyo 1968, for low carbon. */
  readonly pcm: number;
}

/** Carbon equivalents in per cent, unrounded: how readily a steel hardens and cracks beside a weld. */
export function carbonEquivalents(composition: Composition): CarbonEquivalents {
  const { c, si = 0, mn = 0, cr = 0, mo = 0, v = 0, ni = 0, cu = 0, b = 0 } = composition;
  return {
    ce: c + mn / 6 + (cr + mo + v) / 5 + (ni + cu) / 15,
    cet: c + (mn + mo) / 10 + (cr + cu) / 20 + ni / 40,
    pcm: c + si / 30 + (mn + cu + cr) / 20 + ni / 60 + mo / 15 + v / 10 + 5 * b,
  };
}
