import { readFileSync } from 'node:fs';
import { aluminium } from '../../../src/heat/metal/aluminium.ts';
import { carbonSteel } from '../../../src/heat/metal/carbon-steel.ts';
import type { SheetTask } from '../../../src/heat/sheet/conduct-sheet.ts';
import { sheetGrid } from '../../../src/heat/sheet/sheet-grid.ts';
import { solved, stripTask } from '../../heat/sheet-case.ts';
import type { CheckRow } from './check-row.ts';

const disc = { grid: sheetGrid(0.385, 5e-4, 1.06, 0.015), zoneM2: Math.PI * 0.015 ** 2 } as const;
const steel = { properties: carbonSteel } as const;

/** Each in its deck's own shape and losses, on the grid and steps of the tool, without its margin. */
const cases: readonly (readonly [name: string, task: SheetTask, peaks: readonly number[]])[] = [
  ['strip_const', stripTask(), [290.2, 138.4, 45.4, 26.1]],
  ['strip_en1993', stripTask(steel), [276.8, 140.4, 50.3, 28.4]],
  ['strip_en1993_rad', stripTask({ ...steel, convection: 8, emissivity: 0.7 }), [282.4, 152.6, 62.1, 35.6]],
  ['strip_en1993_800', stripTask({ ...steel, sourceCelsius: 800 }), [342.1, 169.6, 57.9, 30.6]],
  [
    'strip_al6xxx',
    stripTask({ properties: aluminium, thicknessM: 2e-3, sourceCelsius: 300 }, 0.6),
    [237.8, 186.5, 113.6, 72.0],
  ],
  ['disc_const', stripTask(disc), [207.2, 86.7, 31.0, 22.2]],
  ['disc_en1993', stripTask({ ...steel, ...disc }), [197.1, 89.0, 33.6, 23.2]],
];

/** A row for each peak, and one for the worst of all tabled times of a place where the rise is above 5 K. */
export function finiteElementRows(): readonly CheckRow[] {
  const table = readFileSync(new URL('../calculix_results.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line) => line.split(','));
  const source = 'CalculiX 2.20, calculix_results.csv';
  return cases.flatMap(([name, task, peaks]) => {
    const sheet = solved(task);
    const own = table.filter(([first]) => first === name);
    if (own.length !== 33) throw new Error(`33 rows of ${name} were expected`);
    return [20, 40, 80, 120].flatMap((mm, n): readonly CheckRow[] => {
      const peak = peaks[n] ?? Number.NaN;
      const peakRow: CheckRow = {
        what: `${name}: peak at ${mm} mm`,
        source: `${source}, output of every 0.1 s`,
        unit: '°C',
        expected: peak,
        computed: sheet.peak(mm),
        base: peak - 20,
        // The published peaks are rounded to 0.05 K.
        allowed: { share: 0.1, lowShare: 0.02, absolute: 0.05 },
      };
      const worst = own
        .map((cells) => ({ seconds: Number(cells[1]), expected: Number(cells[n + 3]) }))
        .filter(({ expected }) => expected - 20 > 5)
        .map((row) => ({ ...row, computed: sheet.at(mm, row.seconds) }))
        .toSorted((a, b) => shareOff(b) - shareOff(a))[0];
      if (!worst) return [peakRow];
      const { seconds, expected, computed } = worst;
      return [
        peakRow,
        {
          what: `${name}: worst tabled time at ${mm} mm, ${seconds} s`,
          ...{ source, unit: '°C', expected, computed, base: expected - 20, allowed: { share: 0.1 } },
        },
      ];
    });
  });
}

const shareOff = (row: { readonly expected: number; readonly computed: number }): number =>
  Math.abs(row.computed - row.expected) / (row.expected - 20);
