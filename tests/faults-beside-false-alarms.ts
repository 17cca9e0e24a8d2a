import type { Fault } from './fault.ts';
import { rail, ring, skin } from './one-change.ts';
import type { Change } from './one-change.ts';

const pillar = '- { part: a-pillar-r, distance: 60 mm, path: same sheet }';

/** One more neighbour of the heated rail. */
export const neighbour = (entry: string): Change => [pillar, `${pillar}\n          - ${entry}`];

/** An aluminium bonnet bolted to hinges of steel, with what is said of the couple. */
export const bonnetOnHinges = (insulation: string): Change => [
  '  - id: mirror-l\n',
  `  - id: bonnet
    name: Bonnet
    kind: bonnet
    structural: false
    class: aluminium
    thickness: 1.1 mm
    damage: { kind: crease, found_by: seen }
    operations:
      - do: replace
        extent: whole
        joints: [{ to: hinges, sheets: [bonnet, hinges], method: bolt, own_tools: true${insulation} }]
      - { do: refinish }
  - { id: hinges, name: Bonnet hinges, kind: bracket, structural: false, class: mild, damage: { kind: none, found_by: seen } }
  - id: mirror-l
`,
];

/** A cosmetic part more. */
export const partMore = (lines: string): Change => [
  '  - id: mirror-l\n',
  `  - { id: more, class: mild, thickness: 0.7 mm, ${lines} }\n  - id: mirror-l\n`,
];

const warmed =
  '{ do: straighten, method: with heat, source: hot air, temperature: 90 °C, hold: 60 s, times: 1, measured_by: { means: contact probe, place: middle of the dent }, cooling: still air, clear_within: 300 mm }';

/** A dented bumper cover, of a material, that is warmed and pressed back. */
export const cover = (
  material: string,
  { structural = false, work = warmed, before = 'mirror-l' } = {},
): Change => [
  `  - id: ${before}\n`,
  `  - id: cover
    name: Bumper cover, front
    kind: ${structural ? 'reinforcement' : 'bumper cover'}
    radar_behind: false
    structural: ${String(structural)}
    ${material}
    damage: { kind: dent, found_by: seen }
    operations:
      - ${work}
      - { do: refinish }
  - id: ${before}
`,
];

const onCover = { plan: skin, on: '- { do: straighten, method: with heat' } as const;

/** The fault beside each good plan that was once held or stopped without cause (near-misses-of-false-alarms.test.ts). */
export const faultsBesideFalseAlarms: readonly Fault[] = [
  ...[
    '{ item: glass, distance: 30 mm, path: through air, treatment: shielded }',
    '{ item: low-voltage battery, distance: 90 mm, path: through air, treatment: shielded }',
    '{ item: refrigerant line, distance: 90 mm, path: through air, treatment: shielded }',
  ].map((entry): Fault => ({
    name: `only shielded beside a heat: ${entry}`,
    plan: rail,
    severity: 'hold',
    changes: [neighbour(entry)],
    rule: 'shield-not-cited',
    on: entry,
  })),
  {
    name: 'glass behind a shield, on the metal that is heated',
    plan: rail,
    severity: 'stop',
    changes: [neighbour('{ item: glass, distance: 30 mm, path: joined, treatment: shielded }')],
    rule: 'neighbour-too-hot',
    on: '{ item: glass',
  },
  {
    name: 'an aluminium bonnet on hinges of steel, and nothing said of what keeps them apart',
    plan: skin,
    severity: 'hold',
    changes: [bonnetOnHinges('')],
    rule: 'unlike-metals-bare',
    on: 'joints: [{ to: hinges',
  },
  ...['none', 'not needed', 'bare, paint ground off'].map((text): Fault => ({
    name: `an aluminium bonnet on hinges of steel, insulation: ${text}`,
    plan: skin,
    severity: 'stop',
    changes: [bonnetOnHinges(`, insulation: '${text}'`)],
    rule: 'unlike-metals-bare',
    on: 'joints: [{ to: hinges',
  })),
  {
    ...onCover,
    name: 'a cover of plastic at 130 °C without the figure of a page',
    severity: 'hold',
    changes: [cover('class: plastic'), ['temperature: 90 °C', 'temperature: 130 °C']],
    rule: 'plastic-heated-over-100',
  },
  {
    ...onCover,
    name: 'a cover of plastic warmed with a torch',
    severity: 'hold',
    changes: [cover('class: plastic'), ['source: hot air', 'source: torch']],
    rule: 'plastic-heated-by-flame',
  },
  {
    ...onCover,
    name: 'a carrier of plastic that bears load, warmed and pressed back',
    severity: 'stop',
    changes: [cover('class: plastic', { structural: true })],
    rule: 'heat-plastic-of-structure',
  },
  {
    ...onCover,
    name: 'a bonnet of carbon fibre, warmed and pressed back',
    severity: 'stop',
    changes: [cover('grade: CFRP')],
    rule: 'heat-other-metal',
  },
  {
    ...onCover,
    name: 'a carrier of plastic that bears load, pressed back cold',
    severity: 'stop',
    changes: [cover('class: plastic', { structural: true, work: '{ do: straighten, method: cold }' })],
    rule: 'straighten-plastic-of-structure',
    on: '{ do: straighten, method: cold }\n      - { do: refinish }\n  - id: mirror-l',
  },
  {
    plan: ring,
    name: 'a sheet that is welded in, called plastic',
    severity: 'stop',
    changes: [['grade: 22MnB5+AS150', 'class: plastic']],
    rule: 'plastic-welded-as-metal',
    on: 'method: resistance spot',
  },
  {
    plan: skin,
    name: 'a wing that is kinked, and nothing said of what lies behind it',
    severity: 'hold',
    changes: [
      partMore(
        'name: Wing, kind: fender, damage: { kind: kink, found_by: seen }, operations: [{ do: replace, extent: whole }]',
      ),
    ],
    rule: 'hidden-layer-not-stated',
    on: 'id: more',
  },
  {
    plan: skin,
    name: 'a part without a kind, called cosmetic, that is welded in',
    severity: 'hold',
    changes: [
      partMore(
        'name: Holder, kind: other, structural: false, damage: { kind: bend, found_by: seen }, operations: [{ do: replace, extent: whole, joints: [{ method: plug weld }] }]',
      ),
    ],
    rule: 'cosmetic-by-own-word',
    on: 'id: more',
  },
];
