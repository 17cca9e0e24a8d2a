import { Mesh } from './mesh.ts';
import type { Deck, Step } from './deck-text.ts';

const mm = 1e-3;
const even = (from: number, to: number, gap: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / gap) + 1 }, (_, i) => from + i * gap);

/** EN 1993-1-2 in all sheets, still air, bright zinc: what the tool takes when a plan is silent. */
const air = { film: 8, emissivity: 0.3, ambient: 20 } as const;

/** Held for a minute and let go: steps of 0.1 s up to two minutes, then 0.5 s. */
const minuteHeld = (celsius: number): readonly Step[] => [
  { seconds: 60, step: 0.1, printEvery: 10, held: celsius },
  { seconds: 60, step: 0.1, printEvery: 10 },
  { seconds: 180, step: 0.5, printEvery: 2 },
];

/**
 * Sheet of 1.2 mm from the hot root to its free end at 35 mm; a second of 1.5 mm on it from 20 mm on to 220 mm.
 * Contact of 1000 W/(m²·K): a layer of 0.1 mm with 0.1 W/(m·K) and next to no heat capacity. Root 600 °C, no zone.
 */
export const layeredFlange: Deck = (() => {
  const mesh = new Mesh();
  const width = [0, 1 * mm];
  const sheet = mesh.block(
    even(0, 35, 1).map((x) => x * mm),
    width,
    [0, 1.2 * mm],
    'steel',
  );
  const film = mesh.block(
    even(20, 35, 1).map((x) => x * mm),
    width,
    [1.2 * mm, 1.3 * mm],
    'contact',
  );
  const second = mesh.block(
    even(20, 220, 1).map((x) => x * mm),
    width,
    [1.3 * mm, 2.8 * mm],
    'steel',
  );
  const inLap = (x: number): boolean => x > 20 * mm && x < 35 * mm;
  return {
    name: 'layered_flange',
    notes: [
      'sheet 1.2 mm, 0 to 35 mm; second sheet 1.5 mm, 20 to 220 mm; contact 1000 W/m2K over 20 to 35 mm',
    ],
    mesh,
    materials: ['steel', 'contact'],
    held: mesh.nodesAt((x, _, z) => x === 0 && z <= 1.2 * mm),
    cooled: [
      { elements: sheet, faces: [1] },
      { elements: mesh.where(sheet, (x) => !inLap(x)), faces: [2] },
      { elements: second, faces: [2] },
      { elements: mesh.where(second, (x) => !inLap(x)), faces: [1] },
    ],
    unused: film,
    air,
    probes: [
      ...[10, 20, 30, 35].map((x) => ({ name: `sheet_${x}mm`, node: mesh.node(x * mm, 0, 0) })),
      ...[20, 30, 40, 60, 100].map((x) => ({ name: `second_${x}mm`, node: mesh.node(x * mm, 0, 2.8 * mm) })),
    ],
    steps: minuteHeld(600),
  };
})();

/** Strip of 1.2 mm with a heated zone of 40 mm, of which half is meshed (mirror at its middle), free end at 60 mm. */
export const finiteStrip: Deck = (() => {
  const mesh = new Mesh();
  const strip = mesh.block(
    even(-20, 60, 1).map((x) => x * mm),
    [0, 1 * mm],
    [0, 1.2 * mm],
    'steel',
  );
  return {
    name: 'finite_strip',
    notes: ['strip 1.2 mm; heated zone -20 to 0 mm (mirror at -20), free end at 60 mm'],
    mesh,
    materials: ['steel'],
    held: mesh.nodesAt((x) => x <= 0),
    cooled: [{ elements: strip, faces: [1, 2] }],
    air,
    probes: [0, 10, 20, 40, 60].map((x) => ({ name: `at_${x}mm`, node: mesh.node(x * mm, 0, 0) })),
    steps: minuteHeld(600),
  };
})();

/**
 * Half of a sheet of 1.2 mm, seam along x on its mirror line, line source through the thickness of 1224 W (half of
 * it here) running at 8 mm/s over 120 mm: net 153 J/mm. Constant 40 W/(m·K) and 4.4 MJ/(m³·K), no melting. Peaks
 * are read across the middle of the seam.
 */
export const movingArc: Deck = (() => {
  const mesh = new Mesh();
  const along = even(0, 120, 2).map((x) => x * mm);
  const across = [...even(0, 12, 1), ...even(15, 60, 3)].map((y) => y * mm);
  const plate = mesh.block(along, across, [0, 1.2 * mm], 'even');
  const seam = mesh.where(plate, (_, y) => y < 1 * mm);
  const passing = 2 / 8;
  return {
    name: 'moving_arc',
    notes: ['half plate 120 x 60 x 1.2 mm, 1224 W at 8 mm/s along y = 0, k 40, rho c 4.4e6, loss h 12'],
    mesh,
    materials: ['even'],
    held: [],
    cooled: [{ elements: plate, faces: [1, 2] }],
    // Half the power on elements of 2 x 1 x 1.2 mm, each while the source is over it.
    heat: seam.map((element, n) => ({
      element,
      wattPerM3: 1224 / 2 / (2 * mm * mm * 1.2 * mm),
      // Half a step late, so that each element is on at exactly five ends of a step.
      from: n * passing + 0.025,
      to: (n + 1) * passing + 0.025,
    })),
    // No radiation: a line source without a pool runs far above any real temperature and would radiate a fifth away.
    air: { film: 12, emissivity: 0, ambient: 20 },
    probes: [5, 10, 15, 21, 30].map((y) => ({ name: `y_${y}mm`, node: mesh.node(60 * mm, y * mm, 0) })),
    steps: [
      { seconds: 15, step: 0.05, printEvery: 10 },
      { seconds: 60, step: 0.25, printEvery: 4 },
    ],
  };
})();

export const decks: readonly Deck[] = [layeredFlange, finiteStrip, movingArc];
