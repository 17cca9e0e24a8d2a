import { describe, expect, test } from 'vitest';
import { findingNumbers } from '../src/report/finding-numbers.ts';
import { judgeText } from './judge-text.ts';

const plan = (operation: string, neighbour = 'thickness: 1.4 mm'): string => `format: 1
stage: draft
vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021, drive: combustion }
parts:
  - { id: h, name: Rail, kind: front rail, structural: true, grade: HC340LA, thickness: 1.2 mm, operations: [{ ${operation}, free_end: runs on, clear_within: 300 mm, near: [{ part: n, distance: 36 mm, path: joined }, { item: glass, distance: 60 mm, path: same sheet }] }] }
  - { id: n, name: Pillar, kind: b-pillar, structural: true, grade: 22MnB5, ${neighbour} }
`;
const seam =
  'do: weld, joints: [{ method: arc seam, form: open butt, settings: { heat_input: 0.144 kJ/mm } }]';
const heat = (temperature: string, hold: string): string =>
  `do: heat, source: induction, temperature: ${temperature}, hold: ${hold}, times: 1, measured_by: { means: contact probe, place: at the edge }`;

function findingsOf(text: string, of: RegExp) {
  return judgeText(text)
    .findings.map(({ finding }) => finding)
    .filter(({ message }) => of.test(message));
}

describe('findings of heat', () => {
  test('of a seam show what the arc puts in and what was taken for its time', () => {
    const [finding] = findingsOf(plan(seam, 'thickness: 0.8 mm'), /^Pillar .* reaches/u);
    expect(finding && findingNumbers(finding)).toMatch(
      /time above limit 300 s assumed, heat input 0\.14 kJ\/mm computed, longest cooling from 800 to 500 °C .* s computed, heat-affected width/u,
    );
    expect(finding?.assumptions).toContain(
      'The heat of a seam is taken to go by within 300 s for each pass.',
    );
  });

  test('do not say twice what a thing is', () => {
    const [glass] = findingsOf(plan(seam), /glass.* reaches/iu);
    expect(glass?.message).toMatch(/^Glass reaches/u);
    const [pillar] = findingsOf(plan(seam, 'thickness: 0.8 mm'), /^Pillar .* reaches/u);
    expect(pillar?.message).toMatch(/^Pillar \(hardened or multi-phase steel\) reaches/u);
  });

  test('of a hold that cannot be read are the one on the entry itself, which says what hangs on it', () => {
    const text = plan(heat('600 °C', '-5 s'));
    expect(findingsOf(text, /held hot is not stated/u)).toEqual([]);
    expect(findingsOf(text, /cannot be read/u)).toEqual([]);
    const told = findingsOf(text, /"-5 s" is negative/u);
    expect(told.map(({ pointer, why }) => [pointer, why.includes('neighbour-too-hot')])).toEqual([
      ['/parts/0/operations/0/hold', true],
    ]);
    // A stop hangs on it: no permit accepts it.
    expect(told[0]?.standsForStop).toBe(true);
  });

  test('of a hold that is not stated are asked once for all neighbours', () => {
    expect(
      findingsOf(plan(heat('600 °C', '').replace('hold: , ', '')), /held hot is not stated/u),
    ).toHaveLength(1);
  });

  test('of a temperature past all computing tell what was added to it', () => {
    const asked = findingsOf(plan(heat('3000 °C', '30 s')), /outside what can be computed/u);
    // The pack adds 10 K for a contact probe or whatever it says; the sentence has to come to 3000.
    expect(asked).toHaveLength(1);
    const [, counted, added] =
      /temperature (\d+) °C.*counted with (\d+) K/u.exec(asked[0]?.message ?? '') ?? [];
    expect(Number(counted) - Number(added)).toBe(3000);
  });
});
