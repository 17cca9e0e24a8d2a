import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/facts/sheet.ts';
import { factsOf } from './facts-of.ts';
import { fullPlan, fullPlanPack } from './full-plan.ts';

describe('the sheets of a plan', () => {
  const derived = factsOf(fullPlan, { statements: fullPlanPack });

  test('one for each thing that rules ask about, at its place', () => {
    const places = (kind: Parameters<typeof derived.all>[0]): readonly string[] =>
      derived.all(kind).map(({ at }) => at);
    expect(places('plan')).toEqual(['']);
    expect(places('vehicle')).toEqual(['/vehicle']);
    expect(places('reference')).toEqual(['/references/0', '/references/1']);
    expect(places('part')).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((index) => `/parts/${String(index)}`));
    expect(places('operation')).toHaveLength(12);
    expect(places('joint')).toEqual([
      ...[0, 1, 2, 3, 4, 5].map((index) => `/parts/1/operations/0/joints/${String(index)}`),
      '/parts/1/operations/1/joints/0',
      '/parts/6/operations/0/joints/0',
    ]);
    expect(places('point')).toEqual([0, 1, 2].map((index) => `/measurements/points/${String(index)}`));
    expect(places('opening')).toEqual(['/measurements/openings/0']);
    expect(places('deviation')).toEqual(['/deviations/0']);
    expect(places('sign-off')).toEqual(['/sign_off']);
  });

  test('each sees the sheets that it stands on, up to the plan', () => {
    for (const sheet of derived.sheets) {
      expect([sheet.kind, sheet.at, lookUp(sheet, 'plan.stage')?.known]).toEqual([
        sheet.kind,
        sheet.at,
        true,
      ]);
    }
    const [joint] = derived.all('joint');
    expect(joint && lookUp(joint, 'operation.do')).toMatchObject({ value: 'section' });
    expect(joint && lookUp(joint, 'part.name')).toMatchObject({ value: 'Door ring' });
    expect(joint && lookUp(joint, 'vehicle.body')).toMatchObject({ value: 'wagon' });
  });

  test('what belongs to a part carries its id, what belongs to an operation its place', () => {
    for (const sheet of [...derived.all('operation'), ...derived.all('joint'), ...derived.all('citation')]) {
      const part = Number(sheet.at.split('/')[2]);
      expect(sheet.part).toBe(
        ['skin', 'ring', 'sill', 'tunnel', 'ring-r', 'pack', 'cap', 'core', 'lid', 'rail'][part],
      );
      expect(sheet.at.startsWith(sheet.operation ?? 'nowhere')).toBe(true);
    }
  });
});

describe('what is written and cannot be read', () => {
  test('is not said to be missing', () => {
    const reason = (text: string, name: string): unknown => factsOf(text).value(name);
    expect(reason('parts: [{ thickness: 1.4 }]', 'part.thickness')).toBe(
      '? What the plan writes there cannot be read.',
    );
    expect(reason('parts: [{}]', 'part.thickness')).toBe('? The sheet thickness is not stated.');
    expect(reason('vehicle: { model_year: 2O21 }', 'vehicle.model_year')).toBe(
      '? What the plan writes there cannot be read.',
    );
  });

  test('stands for itself alone: the neighbour’s fact keeps its own reason', () => {
    const derived = factsOf('parts: [{ thickness: 1.4 }, {}]');
    expect(derived.value('part.thickness', '/parts/1')).toBe('? The sheet thickness is not stated.');
  });
});

test('the same plan gives the same facts, and asking afterwards twice changes nothing', () => {
  const facts = (): string =>
    JSON.stringify(factsOf(fullPlan, { statements: fullPlanPack }).sheets.map(({ facts: own }) => own));
  expect(facts()).toBe(facts());
});
