import { carbonSteel } from '../../../src/heat/metal/carbon-steel.ts';
import type { Mesh } from './mesh.ts';

export interface Deck {
  readonly name: string;
  readonly notes: readonly string[];
  readonly mesh: Mesh;
  readonly materials: readonly ('steel' | 'contact' | 'even')[];
  /** Nodes held at the temperature of a step. */
  readonly held: readonly number[];
  /** Faces 1 (low z) and 2 (high z) that lose heat to the air. */
  readonly cooled: readonly { readonly elements: readonly number[]; readonly faces: readonly (1 | 2)[] }[];
  /** Elements that lose nothing, named so that none is forgotten. */
  readonly unused?: readonly number[];
  readonly heat?: readonly {
    readonly element: number;
    readonly wattPerM3: number;
    readonly from: number;
    readonly to: number;
  }[];
  readonly air: { readonly film: number; readonly emissivity: number; readonly ambient: number };
  readonly probes: readonly { readonly name: string; readonly node: number }[];
  readonly steps: readonly Step[];
}

export interface Step {
  readonly seconds: number;
  readonly step: number;
  readonly printEvery: number;
  readonly held?: number;
}

/** A CalculiX input deck: m, s, W, kg, °C; every outer face not named loses nothing. */
export function deckText(deck: Deck): string {
  const { mesh, air } = deck;
  return [
    `** ${deck.name}; written by write-decks.ts`,
    ...deck.notes.map((note) => `** ${note}`),
    '*NODE, NSET=ALL',
    ...mesh.nodes.map((place, n) => [n + 1, ...place.map(short)].join(', ')),
    ...deck.materials.flatMap((name) => [
      `*ELEMENT, TYPE=DC3D8, ELSET=${name}`,
      ...mesh.elements.flatMap(({ nodes, material }, n) =>
        material === name ? [[n + 1, ...nodes].join(', ')] : [],
      ),
    ]),
    ...deck.cooled.flatMap(({ elements }, n) => [`*ELSET, ELSET=COOLED${n + 1}`, ...lines(elements)]),
    ...(deck.held.length > 0 ? ['*NSET, NSET=HELD', ...lines(deck.held)] : []),
    '*NSET, NSET=PROBE',
    ...lines(deck.probes.map(({ node }) => node)),
    ...deck.materials.flatMap((name) => [
      `*MATERIAL, NAME=${name}`,
      ...material(name),
      `*SOLID SECTION, ELSET=${name}, MATERIAL=${name}`,
    ]),
    ...(deck.heat ?? []).flatMap(({ from, to }, n) => [
      `*AMPLITUDE, NAME=A${n + 1}, TIME=TOTAL TIME`,
      `${short(Math.max(0, from - 1e-4))}, ${from === 0 ? 1 : 0}, ${short(from + 1e-4)}, 1, ${short(to - 1e-4)}, 1, ${short(to + 1e-4)}, 0`,
    ]),
    '*PHYSICAL CONSTANTS, ABSOLUTE ZERO=-273.15, STEFAN BOLTZMANN=5.670374E-8',
    '*INITIAL CONDITIONS, TYPE=TEMPERATURE',
    `ALL, ${air.ambient}`,
    ...deck.steps.flatMap((step, n) => [
      '*STEP, INC=1000000',
      '*HEAT TRANSFER, DIRECT',
      `${step.step}, ${step.seconds}`,
      '*BOUNDARY, OP=NEW',
      ...(step.held === undefined ? [] : [`HELD, 11, 11, ${step.held}`]),
      ...deck.cooled.flatMap(({ faces }, n) =>
        faces.flatMap((face) => [
          '*FILM',
          `COOLED${n + 1}, F${face}, ${air.ambient}, ${air.film}`,
          ...(air.emissivity === 0
            ? []
            : ['*RADIATE', `COOLED${n + 1}, R${face}, ${air.ambient}, ${air.emissivity}`]),
        ]),
      ),
      ...fluxes(deck, n),
      `*NODE PRINT, NSET=PROBE, FREQUENCY=${step.printEvery}`,
      'NT',
      '*END STEP',
    ]),
    '',
  ].join('\n');
}

/** All heat falls within the first step. */
function fluxes({ heat = [] }: Deck, step: number): readonly string[] {
  if (heat.length === 0) return [];
  if (step > 0) return ['*DFLUX, OP=NEW'];
  return heat.flatMap(({ element, wattPerM3 }, n) => [
    `*DFLUX, AMPLITUDE=A${n + 1}`,
    `${element}, BF, ${short(wattPerM3)}`,
  ]);
}

const short = (value: number): string => Number(value.toPrecision(8)).toString();

const lines = (numbers: readonly number[]): readonly string[] =>
  Array.from({ length: Math.ceil(numbers.length / 12) }, (_, n) =>
    numbers.slice(12 * n, 12 * n + 12).join(', '),
  );

function material(name: Deck['materials'][number]): readonly string[] {
  switch (name) {
    case 'contact':
      return ['*DENSITY', '1', '*CONDUCTIVITY', '0.1', '*SPECIFIC HEAT', '1'];
    case 'even':
      return ['*DENSITY', '8000', '*CONDUCTIVITY', '40', '*SPECIFIC HEAT', '550'];
    case 'steel':
      return [
        '*DENSITY',
        '7850',
        '*CONDUCTIVITY',
        ...[20, 799.9, 800, 1200].map((t) => `${short(carbonSteel.conductivity(t))}, ${t}`),
        '*SPECIFIC HEAT',
        ...Array.from({ length: 59 }, (_, n) => 20 + 10 * n).map(
          (t) => `${short(carbonSteel.heatCapacity(t))}, ${t}`,
        ),
      ];
  }
}
