import type { Fault } from './fault.ts';
import { rail, skin } from './one-change.ts';
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
];
