import { expect, test } from 'vitest';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { windowsFor } from '../../src/joint/weld-window.ts';
import type { WeldWindow } from '../../src/joint/weld-window.ts';

const windows = builtInPacks().flatMap((pack) => pack.windows);

// BS EN ISO 14373:2015, guide table for bare low-carbon sheet, as a supplier prints it (seen); cycles of 20 ms.
test.each([
  [0.5, 4, [0.9, 1.1], [5, 7], [4, 6], [1.3, 1.8], [4, 5], [5, 8]],
  [0.9, 5, [1.4, 1.5], [9, 12], [6, 8], [1.9, 2.6], [7, 10], [7, 10]],
  [1.2, 5, [1.6, 1.8], [11, 15], [7, 9], [2.5, 3.2], [8, 12], [8, 12]],
  [1.3, 6, [1.9, 2.1], [14, 18], [8, 11], [3.0, 4.0], [9, 13], [10, 13]],
  [3.0, 9, [4.4, 4.7], [28, 35], [12, 17], [6.0, 7.5], [15, 20], [17, 20]],
] as const)('bare sheet of %f mm', (mm, tip, force, cycles, current, highForce, highCycles, highCurrent) => {
  expect(windowsFor(windows, mm, 'bare').map(shape)).toEqual([
    [tip, force, cycles, current],
    [tip, highForce, highCycles, highCurrent],
  ]);
});

// BS 1140:1993, hot-dip zinc-coated low-carbon sheet, as a supplier prints it (seen); forces there in kgf.
test.each([
  [0.6, [1.5, 2.0], [6, 8], [7, 9]],
  [0.8, [1.9, 2.2], [8, 10], [8, 10]],
  [1.2, [2.8, 3.6], [10, 13], [10, 13]],
  [2.0, [4.4, 5.5], [12, 16], [18, 21]],
] as const)('zinc-coated sheet of %f mm', (mm, force, cycles, current) => {
  expect(windowsFor(windows, mm, 'zinc').map(shape)).toEqual([[undefined, force, cycles, current]]);
});

function shape({ tipMm, force, time, current }: WeldWindow): unknown {
  const cycles = [time.min, time.max].map((seconds) => Math.round(seconds / 0.02));
  return [tipMm, [force.min, force.max], cycles, [current.min, current.max]];
}
