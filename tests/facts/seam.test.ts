import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { factDictionary } from '../../src/generated/fact-names.ts';
import { factsOf as factsInText, readTemplate } from '../../src/packs/message-template.ts';
import type { FactSheet } from '../../src/facts/sheet.ts';
import { canonicalUnit, dimensions } from '../../src/quantity/dimension.ts';
import { allFaults } from '../all-faults.ts';
import { sheetsOf } from '../derive-text.ts';
import { changed } from '../one-change.ts';
import { factsOf } from './facts-of.ts';
import {
  exchangedMeasuring,
  batteryOutByNobody,
  batteryOutTooLate,
  fullMeasuring,
  fullOfSlips,
  fullPlan,
  fullPlanPack,
  fullPlanParts,
  mirroredBefore,
  mirroredMeasuring,
} from './full-plan.ts';

const nothing = 'format: 1\nvehicle: {}\nparts:\n  - {}\n';
const hollow = `format: 1
vehicle: { vin: X, drive: [] }
references: [{}]
make_safe: { low_voltage: {}, restraints: { units: [{}] }, high_voltage: { isolation: {}, proof_of_absence: {}, quarantine: {} } }
parts:
  - operations: [{ do: heat, near: [{}, { part: nobody }], joints: [{}], cite: {} }, {}, { do: section, cite: [{ reference: x }] }]
measurements: { points: [{}], openings: [{}], zero_points: [] }
finish: { bake: {}, cavities: [{}] }
verify: { high_voltage: {} }
deviations: [{}]
sign_off: {}
typo: 1
`;
const plans = [
  ['nothing', nothing],
  ['hollow', hollow],
  ...readdirSync('examples/plans').map(
    (name) => [name, readFileSync(`examples/plans/${name}`, 'utf8')] as const,
  ),
] as const;

const full = factsOf(fullPlan, {
  statements: fullPlanPack,
  parts: fullPlanParts,
  ruleStanding: () => ({ kind: 'ended', with: 'general 2.0.0', replacedBy: 'new-rule' }),
  found: [{ rule: 'revision-missing', severity: 'hold', fingerprint: '1' }],
}).sheets;
const measured = [
  ...[
    fullMeasuring,
    mirroredMeasuring,
    mirroredBefore,
    exchangedMeasuring,
    batteryOutByNobody,
    batteryOutTooLate,
    fullOfSlips,
  ].flatMap((text) => factsOf(text).sheets),
  // A permit for a rule that found nothing, beside one of nearly its name that did.
  ...factsOf('deviations: [{ rule: revision-missin }]', {
    found: [{ rule: 'revision-missing', severity: 'hold', fingerprint: '1' }],
  }).sheets,
];
// Where another document took the place of the one cited, no permission of it counts.
const replaced = factsOf(fullPlan, {
  documents: [{ document: 'BRM-1', revision: 'D', by: { document: 'BRM-1', revision: 'E' } }],
}).sheets;
const sheetsOfPlans: readonly (readonly [string, readonly FactSheet[]])[] = [
  ...plans.map(([name, text]) => [name, sheetsOf(text)] as const),
  ['everything', full],
  ['everything measured', measured],
];

describe('the seam: every fact of the schema is on every sheet of its kind, of its declared form', () => {
  test.each(sheetsOfPlans)('%s', (_name, sheets) => {
    for (const sheet of sheets) {
      const expected = Object.entries(factDictionary)
        .filter(([, entry]) => entry.kind === sheet.kind)
        .map(([name]) => name);
      expect([sheet.kind, Object.keys(sheet.facts).sort()]).toEqual([sheet.kind, expected.sort()]);
      for (const [name, fact] of Object.entries(sheet.facts)) {
        if (!fact.known) {
          expect([name, fact.reason.length > 5]).toEqual([name, true]);
          continue;
        }
        const entry = factDictionary[name];
        expect([name, isOfType(fact.value, entry?.type ?? '')]).toEqual([name, true]);
        const words = entry?.words;
        if (words !== undefined) {
          const given: readonly string[] = typeof fact.value === 'object' ? fact.value : [String(fact.value)];
          expect([name, given.filter((word) => !words.includes(word))]).toEqual([name, []]);
        }
        if (fact.from === 'assumed') expect([name, fact.note !== undefined]).toEqual([name, true]);
      }
    }
  });

  test('every fact is known on some sheet of the plan that states everything, of one full of slips, or of one with one thing wrong', () => {
    const open = new Set(Object.keys(factDictionary));
    const close = (sheets: readonly FactSheet[]): void => {
      for (const { facts } of sheets)
        for (const name of Object.keys(facts))
          if (open.has(name) && facts[name]?.known === true) open.delete(name);
    };
    close([...full, ...measured, ...replaced, ...sheetsOf(hollow)]);
    for (const { plan, changes } of allFaults) {
      if (open.size > 0) close(sheetsOf(changed(plan, changes)));
    }
    expect([...open]).toEqual([]);
  }, 120_000);

  // On this rests that the loader of packs refuses `{ known: false }` for such a fact.
  test('a fact for which the schema names nothing that makes it unknown is known on every sheet', () => {
    const unknown = sheetsOfPlans.flatMap(([, sheets]) =>
      sheets.flatMap(({ facts }) =>
        Object.entries(facts).flatMap(([name, fact]) =>
          !fact.known && factDictionary[name]?.alwaysKnown === true ? [name] : [],
        ),
      ),
    );
    expect([...new Set(unknown)].sort()).toEqual([]);
  });

  test('every number is in the one unit of its dimension, or is a count', () => {
    for (const [name, { type, unit, dimension }] of Object.entries(factDictionary)) {
      const known = dimensions.find((one) => one === dimension);
      if (type === 'number') expect([name, unit]).toEqual([name, known && canonicalUnit[known]]);
      else expect([name, unit]).toEqual([name, undefined]);
    }
  });

  test('a fact of the plan names a key of the plan where it stands', () => {
    for (const sheet of full) {
      for (const [name, fact] of Object.entries(sheet.facts)) {
        expect([name, fact.at ?? '']).toEqual([name, expect.stringMatching(/^(?:\/[\w-]+)*$/u)]);
      }
    }
  });

  test('the two plans that state nothing meet every kind of sheet', () => {
    const kinds = new Set([...sheetsOf(nothing), ...sheetsOf(hollow)].map(({ kind }) => kind));
    expect(
      [...new Set(Object.values(factDictionary).map(({ kind }) => kind))].filter((kind) => !kinds.has(kind)),
    ).toEqual([
      // A citation needs something that is pointed at, an order two days.
      'citation',
      'order',
    ]);
  });
});

function isOfType(value: unknown, type: string): boolean {
  switch (type) {
    case 'yes-no':
      return typeof value === 'boolean';
    case 'count':
      return Number.isInteger(value);
    case 'number':
      return typeof value === 'number' && !Number.isNaN(value);
    case 'words':
      return Array.isArray(value);
    default:
      return typeof value === 'string';
  }
}

/** Facts that no rule of the general pack reads, and the file that shows each to a reader or judges by it. */
const shownBy: Readonly<Record<string, string>> = {
  'part.yield': 'report/sheet/sheet-parts.ts',
  'part.weldability': 'report/sheet/sheet-parts.ts',
  'provision.says': 'report/sheet/sheet-parts.ts',
  'joint.spot_shear': 'report/sheet/sheet-joints.ts',
  'joint.spot_peel': 'report/sheet/sheet-joints.ts',
  'joint.rivet_bearing': 'report/sheet/sheet-joints.ts',
  'reference.kind': 'report/sheet/sheet-vehicle.ts',
  'reference.covers_vehicle': 'report/sheet/sheet-vehicle.ts',
  'provision.by': 'judge/judge-sheets.ts',
  // What `heat` tells of a plan.
  'exposure.peak_at': 'facts/heat/plan-heat.ts',
  'exposure.how_sure': 'facts/heat/plan-heat.ts',
};

test('every fact is read by a rule, or by the file that shows it', () => {
  const read = new Set(
    builtInPacks().flatMap(({ rules }) =>
      rules.flatMap(({ when, unless, message, instead, place, shows = [] }) => [
        ...shows,
        ...[...when, ...unless.flat()].map(({ fact }) => fact),
        ...[message, instead].flatMap((text) => {
          const template = readTemplate(text);
          return template.ok ? factsInText(template.segments) : [];
        }),
        ...(place === undefined ? [] : [place]),
      ]),
    ),
  );
  const unread = Object.keys(factDictionary).filter((name) => !read.has(name));
  expect(unread.sort()).toEqual(Object.keys(shownBy).sort());
  for (const [name, file] of Object.entries(shownBy)) {
    expect(readFileSync(`src/${file}`, 'utf8'), `${name} in ${file}`).toContain(`'${name}'`);
  }
});
