import { margin } from './margin.ts';

/** Ends of a recommended range, both in it. */
export interface Range {
  readonly min: number;
  readonly max: number;
}

/** What is usual for one range of sheet, as a rule pack states it. Forces kN, currents kA, times s, lengths mm. */
export interface WeldWindow {
  readonly coat: 'bare' | 'zinc';
  /** Single sheet: over the first, up to and with the second. */
  readonly overMm: number;
  readonly upToMm: number;
  readonly force: Range;
  readonly current: Range;
  readonly time: Range;
  /** Electrode tip face. */
  readonly tipMm?: number;
}

export interface SpotSettings {
  readonly forceKn?: number;
  readonly currentKa?: number;
  readonly timeS?: number;
}

export interface OffWindow {
  readonly what: 'force' | 'current' | 'time';
  readonly value: number;
  readonly window: Range;
}

/** The windows for a sheet; a guide may list several, as one of medium and one of high force. */
export function windowsFor(
  windows: readonly WeldWindow[],
  governingMm: number,
  coat: WeldWindow['coat'],
): readonly WeldWindow[] {
  return windows.filter(
    (window) =>
      window.coat === coat &&
      margin(governingMm, window.overMm) > 0 &&
      margin(governingMm, window.upToMm) <= 0,
  );
}

/** A guide is rounded: within this share of an end a setting is no other. Common practice. */
const slack = 0.1;

/**
 * Which settings lie outside the window that they fit best, by more than a tenth of its end. Settings that are left out are
 * passed over. Being inside proves nothing: only a coupon does.
 */
export function offWindow(settings: SpotSettings, windows: readonly WeldWindow[]): readonly OffWindow[] {
  const answers = windows.map((window) => offOne(settings, window));
  return answers.toSorted((a, b) => a.length - b.length)[0] ?? [];
}

function offOne({ forceKn, currentKa, timeS }: SpotSettings, window: WeldWindow): readonly OffWindow[] {
  const asked = [
    ['force', forceKn, window.force],
    ['current', currentKa, window.current],
    ['time', timeS, window.time],
  ] as const;
  return asked.flatMap(([what, value, range]) =>
    value === undefined ||
    (margin(value, range.min * (1 - slack)) >= 0 && margin(value, range.max * (1 + slack)) <= 0)
      ? []
      : [{ what, value, window: range }],
  );
}
