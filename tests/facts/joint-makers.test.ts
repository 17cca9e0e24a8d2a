import { expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';
import type { Deriving } from './facts-of.ts';

const spot = 'method: resistance spot, to: floor, sheets: [sill, floor]';
const plan = (job: string, operation: string, joints: string, kind = 'sill'): string => `job: { ${job} }
parts:
  - { id: sill, name: ${kind === 'sill' ? 'Sill' : 'Wing'}, kind: ${kind}, grade: HC340LA, operations: [{ do: replace, extent: whole, ${operation} joints: [${joints}] }] }
  - { id: floor, name: Floor, kind: floor, grade: DC04 }
`;

/** The joints that a fact names, and where; undefined when it is not known. */
function made(fact: string, text: string, deriving: Deriving = {}): readonly unknown[] | undefined {
  const found = factsOf(text, deriving).fact(`plan.joints_by_${fact}`, '');
  return found.known ? [found.value, found.at] : undefined;
}

test('one entry of the job answers for every joint; without one each kind is named once, at its first joint', () => {
  const joints = `{ ${spot} }, { ${spot} }, { method: plug weld, to: floor, sheets: [sill, floor] }, { method: bolt }, { method: hem }`;
  expect(made('nobody', plan('', '', joints))).toEqual([
    'plug weld at Sill; resistance spot at Sill',
    '/parts/0/operations/0/joints/2',
  ]);
  expect(
    made('nobody', plan('joined_by: [{ name: T. Holm, qualification: W-1 }]', '', joints)),
  ).toBeUndefined();
  expect(made('nobody', plan('joined_by: [{ name: T. Holm, methods: [plug weld] }]', '', joints))).toEqual([
    'resistance spot at Sill',
    '/parts/0/operations/0/joints/0',
  ]);
});

test('the joint’s own person goes before the operation’s, and that before the job’s', () => {
  const job = 'joined_by: [{ name: A, qualification: none }]';
  const operation = 'by: { name: B, qualification: in training },';
  expect(made('unqualified', plan(job, '', `{ ${spot} }`))).toEqual([
    'resistance spot by A at Sill',
    '/job/joined_by/0',
  ]);
  expect(made('unqualified', plan(job, operation, `{ ${spot} }`))).toEqual([
    'resistance spot by B at Sill',
    '/parts/0/operations/0/by',
  ]);
  expect(
    made('unqualified', plan(job, operation, `{ ${spot}, by: { name: C, qualification: W-1 } }`)),
  ).toBeUndefined();
});

test('nobody is asked for joints of a skin, nor for work that is not planned', () => {
  expect(made('nobody', plan('', '', `{ ${spot} }`, 'fender'))).toBeUndefined();
  expect(made('nobody', plan('', 'planned: false,', `{ ${spot} }`))).toBeUndefined();
  expect(made('nobody', plan('', 'planned: false, done: 2026-10-10,', `{ ${spot} }`))).toBeDefined();
});

test('an approval ends by the day of the joint, else by the as-of date', () => {
  const job = 'joined_by: [{ name: T. Holm, qualification: W-1, valid_until: 2026-10-10 }]';
  const dated = (day: string): string => plan(job, '', `{ ${spot}, done: ${day} }`);
  expect(made('lapsed', dated('2026-10-10'))).toBeUndefined();
  expect(made('lapsed', dated('2026-10-11'))).toEqual([
    'resistance spot by T. Holm, valid until 2026-10-10, at Sill',
    '/job/joined_by/0',
  ]);
  expect(made('lapsed', plan(job, '', `{ ${spot} }`), { asOf: '2026-10-10' })).toBeUndefined();
  expect(made('lapsed', plan(job, '', `{ ${spot} }`), { asOf: '2026-10-11' })).toBeDefined();
});

test('who is named for the joint of a skin to structure is held to it; a glazier is not', () => {
  const job = (qualification: string): string =>
    `joined_by: [{ name: T. Holm, qualification: '${qualification}', valid_until: 2026-10-10 }]`;
  const bond = '{ method: adhesive and rivet, to: floor, done: 2026-10-11 }';
  const at = (kind: string, fact: string, qualification: string, to = bond): boolean =>
    made(fact, plan(job(qualification), '', to, kind)) !== undefined;
  expect(at('quarter panel, structural: false', 'lapsed', 'bonding, steel')).toBe(true);
  expect(at('quarter panel, structural: false', 'other_test', 'resistance spot, steel')).toBe(true);
  expect(at('quarter panel, structural: false', 'unqualified', 'in training')).toBe(true);
  expect(at('glass', 'lapsed', 'bonding, steel')).toBe(false);
  expect(
    at(
      'quarter panel, structural: false',
      'lapsed',
      'bonding, steel',
      bond.replace('to: floor', 'to: elsewhere'),
    ),
  ).toBe(false);
});

test('named again at the work with the same qualification, an approval still ends', () => {
  const job = 'joined_by: [{ name: T. Holm, qualification: W-1, valid_until: 2026-10-10 }]';
  const by = (qualification: string): string =>
    `{ ${spot}, done: 2026-10-11, by: { name: T. Holm, qualification: ${qualification} } }`;
  expect(made('lapsed', plan(job, '', by('W-1')))).toBeDefined();
  expect(made('lapsed', plan(job, '', by('W-2')))).toBeUndefined();
});
