import { readFileSync } from 'node:fs';
import { adamsPeakCelsius } from '../../../src/heat/weld/adams.ts';
import { solveHeldLap } from '../../../src/heat/sheet/held-lap.ts';
import { solveHeldSheet } from '../../../src/heat/sheet/held-sheet.ts';
import type { PointAnswer } from '../../../src/heat/sheet/sheet-answer.ts';
import { between } from '../../heat/sheet-case.ts';
import type { Allowed, CheckRow } from './check-row.ts';

/**
 * The decks of `decks/` with their stored results. The answers carry the tool's margin of 1.5 % of the rise; heated zone and
 * metal are the deck's own, so a peak may never be low.
 */
export function ownDeckRows(): readonly CheckRow[] {
  return [...flangeRows(), ...finiteStripRows(), ...movingArcRows()];
}

const held = { sourceCelsius: 600, holdSeconds: 60, times: 1 } as const;
const peakAllowed: Allowed = { share: 0.06, lowShare: 0 };

function flangeRows(): readonly CheckRow[] {
  const lap = solveHeldLap({
    ...held,
    heated: { metal: 'steel', thicknessMm: 1.2, freeEndMm: 35 },
    other: { metal: 'steel', thicknessMm: 1.5, fromMm: 20, freeEndMm: 220 },
    contact: { kind: 'stated', wattPerM2K: 1000 },
    heatedZoneMm: 0,
  });
  if (!lap.ok) throw new Error(lap.reason);
  return rowsOf('layered_flange', (place) =>
    (place.startsWith('second') ? lap.other : lap.heated).at(millimetres(place)),
  );
}

function finiteStripRows(): readonly CheckRow[] {
  const strip = solveHeldSheet({ ...held, metal: 'steel', thicknessMm: 1.2, freeEndMm: 60 });
  if (!strip.ok) throw new Error(strip.reason);
  // The source itself is not of interest: it is told never to be above the held temperature.
  return rowsOf('finite_strip', (place) => strip.history.at(millimetres(place)), 'at_0mm');
}

function rowsOf(deck: string, at: (place: string) => PointAnswer, without?: string): readonly CheckRow[] {
  const { places, rows } = stored(deck);
  const source = `CalculiX 2.20, decks/${deck}.inp`;
  return places.flatMap((place, n): readonly CheckRow[] => {
    if (place === without) return [];
    const answer = at(place);
    if (!answer.ok) throw new Error(answer.reason);
    const { seconds, celsius, peakCelsius } = answer.point;
    const peak = Math.max(...rows.map((row) => row[n + 1] ?? Number.NaN));
    const off = (row: { readonly computed: number; readonly expected: number }): number =>
      Math.abs(row.computed - row.expected) / (row.expected - 20);
    const worst = rows
      .map((row) => ({ seconds: row[0] ?? Number.NaN, expected: row[n + 1] ?? Number.NaN }))
      .filter(({ expected }) => expected - 20 > 5)
      .map((row) => ({ ...row, computed: between(seconds, celsius, row.seconds) }))
      .toSorted((a, b) => off(b) - off(a))[0];
    const common = { source, unit: '°C' };
    return [
      {
        ...common,
        what: `${deck}: peak ${place}, with margin`,
        ...{ expected: peak, computed: peakCelsius, base: peak - 20, allowed: peakAllowed },
      },
      ...(worst
        ? [
            {
              ...common,
              what: `${deck}: worst time ${place}, ${worst.seconds} s, with margin`,
              expected: worst.expected,
              computed: worst.computed,
              base: worst.expected - 20,
              allowed: { share: 0.1 },
            },
          ]
        : []),
    ];
  });
}

/**
 * A source that really moves, and loses heat, beside the formula that takes a fast one and no loss: never low, and how
 * much it is high grows with distance. The distance counts from the edge of the fused metal: Q/d/(√(2πe)·ρc·1490).
 */
function movingArcRows(): readonly CheckRow[] {
  const { places, rows } = stored('moving_arc');
  const fusedHalfMm = 153 / 1.2 / (Math.sqrt(2 * Math.PI * Math.E) * 0.0044 * 1490);
  return places.map((place, n) => {
    const expected = Math.max(...rows.map((row) => row[n + 1] ?? Number.NaN));
    const distanceMm = millimetres(place) - fusedHalfMm;
    const answer = adamsPeakCelsius({ heatInputJPerMm: 153, thicknessMm: 1.2, distanceMm, metal: 'steel' });
    return {
      what: `moving_arc: Adams' peak ${place} from the seam`,
      source: 'CalculiX 2.20, decks/moving_arc.inp',
      unit: '°C',
      expected,
      computed: answer.ok ? answer.peakCelsius : Number.NaN,
      base: expected - 20,
      allowed: { share: 0.25, lowShare: 0 },
    };
  });
}

function stored(deck: string): { readonly places: readonly string[]; readonly rows: readonly number[][] } {
  const [head = '', ...lines] = readFileSync(new URL(`../decks/${deck}.csv`, import.meta.url), 'utf8')
    .trim()
    .split('\n');
  return { places: head.split(',').slice(1), rows: lines.map((line) => line.split(',').map(Number)) };
}

const millimetres = (place: string): number => Number(/\d+/.exec(place)?.[0] ?? Number.NaN);
