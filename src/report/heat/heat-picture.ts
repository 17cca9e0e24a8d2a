import type { TemperatureHistory } from '../../heat/point-history.ts';
import type { HeatCurve } from '../../heat/sheet/heat-curve.ts';

/** What a picture of temperature against distance shows, for the terminal and for SVG alike. */
export interface HeatPicture {
  readonly title: string;
  readonly curves: readonly PictureCurve[];
  readonly limits: readonly PictureLimit[];
  readonly marks: readonly PictureMark[];
  /** Where distances count from; the heated zone when absent. */
  readonly from?: 'heated zone' | 'fused metal';
  /** What takes heat on the way and was counted. */
  readonly sinks?: readonly PictureSink[];
  /** What single places go through, one curve each; where no history is computed there is none. */
  readonly times?: readonly PictureTime[];
  /** Drawn as an upright line where given, mm. */
  readonly clearMm?: number;
}

export interface PictureTime {
  readonly label: string;
  readonly history: TemperatureHistory;
}

export interface PictureSink {
  readonly fromMm: number;
  readonly toMm: number;
  readonly label: string;
}

export interface PictureCurve {
  readonly label: string;
  readonly curve: HeatCurve;
}

export interface PictureLimit {
  readonly celsius: number;
  readonly label: string;
}

/** One neighbour; without a peak it stands on the axis alone. */
export interface PictureMark {
  readonly distanceMm: number;
  readonly peakCelsius?: number;
  readonly label: string;
}

export interface PictureScale {
  readonly mostMm: number;
  readonly mostCelsius: number;
  readonly stepMm: number;
  readonly stepCelsius: number;
}

/** Both axes from 0 to a round number just past all that is drawn. */
export function scaleOf({ curves, limits, marks }: HeatPicture, gaps: number): PictureScale {
  const celsius = [
    ...curves.flatMap(({ curve }) => curve.peakCelsius),
    ...limits.map((limit) => limit.celsius),
    ...marks.flatMap(({ peakCelsius }) => (peakCelsius === undefined ? [] : [peakCelsius])),
  ];
  const mm = curves.flatMap(({ curve }) => curve.distancesMm);
  const stepCelsius = roundStep(Math.max(1, ...celsius) / gaps);
  const stepMm = roundStep(Math.max(1, ...mm) / gaps);
  return {
    mostMm: Math.ceil(Math.max(1, ...mm) / stepMm) * stepMm,
    mostCelsius: Math.ceil(Math.max(1, ...celsius) / stepCelsius) * stepCelsius,
    stepMm,
    stepCelsius,
  };
}

/** The next of 1, 2, 5, 10 … that is no smaller. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const digit = [1, 2, 5].find((one) => one * power >= least * (1 - 1e-9));
  return (digit ?? 10) * power;
}

/** The words under the axis of distance. */
export function axisWords({ from = 'heated zone' }: HeatPicture): string {
  return `from the edge of the ${from}`;
}

/** Whether any curve is known at one time, beside the highest of all times. */
export function showsOneTime({ curves }: HeatPicture): boolean {
  return curves.some(({ curve }) => curve.endOfHoldCelsius.length > 0);
}

/** What stands in a mark, in the picture and in the list below it: 1 to 9, then letters. */
export function markSign(index: number): string {
  return '123456789abcdefghijklmnopqrstuvwxyz'.charAt(index) || '+';
}
