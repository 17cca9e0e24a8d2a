import { readFileSync } from 'node:fs';
import { temperedRange } from '../../src/heat/strength/tempered-range.ts';

/** One measured point and what the curve says of it. */
export interface HeldOut {
  readonly set: string;
  readonly celsius: number;
  readonly seconds: number;
  readonly parameterHours: number;
  readonly measuredHv: number;
  readonly likelyHv: number;
  readonly leastHv: number;
  readonly mostHv: number;
}

/**
 * Hardness of tempered martensite as published, Rockwell C turned into Vickers by ASTM E140 (below HRC 20 an
 * extrapolation): steel 1026 (0.25 % C) and J. H. Hollomon and L. D. Jaffe 1945 (0.31 % C). Both from 490 HV: the 0.31 % C
 * steel reads 488 on the four points nearest to paint baking; for 1026 none is published and the same is taken.
 *
 * The working curve was fitted to these very points, so this is its scatter and no independent test.
 */
export function heldOut(): readonly HeldOut[] {
  const text = readFileSync(new URL('./tempering_holdout.csv', import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [set = '', , , , , celsius, seconds, parameter, , measured] = line.split(',');
      const range = temperedRange(
        { seconds: [0, Number(seconds)], celsius: [Number(celsius), Number(celsius)] },
        490,
      );
      if (range.state !== 'tempered') throw new Error(`${line}: ${range.state}`);
      return {
        set,
        celsius: Number(celsius),
        seconds: Number(seconds),
        measuredHv: Number(measured),
        ...range,
        parameterHours: Number(parameter),
      };
    });
}

export interface Scatter {
  readonly points: number;
  readonly meanHv: number;
  readonly rmsHv: number;
  /** Curve above measurement: the unsafe side. */
  readonly worstUnsafeHv: number;
  readonly worstSafeHv: number;
  /** Share of the points that the least lies at or below. */
  readonly covered: number;
}

export function scatterOf(points: readonly HeldOut[]): Scatter {
  const errors = points.map(({ likelyHv, measuredHv }) => likelyHv - measuredHv);
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  return {
    points: points.length,
    meanHv: mean(errors),
    rmsHv: Math.sqrt(mean(errors.map((one) => one * one))),
    worstUnsafeHv: Math.max(...errors),
    worstSafeHv: Math.min(...errors),
    covered: points.filter(({ leastHv, measuredHv }) => leastHv <= measuredHv).length / points.length,
  };
}
