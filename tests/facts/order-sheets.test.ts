import { expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

/** What is dated too early, each with what has to come first; nothing where the days prove nothing. */
function early(text: string): readonly (readonly [then: unknown, first: unknown])[] {
  return factsOf(`${tarn}\n${text}`)
    .all('order')
    .map(({ facts }) => {
      const [then, first] = [facts['order.then'], facts['order.first']];
      return [then?.known === true && then.value, first?.known === true && first.value] as const;
    });
}

const radar = (done: string, sensor = 'front radar', more = ''): string =>
  `calibrations: [{ sensor: ${sensor}, done: ${done}${more} }]`;
const cover = (name: string, done: string, more = 'radar_behind: true'): string =>
  `parts: [{ id: c, name: ${name}, kind: bumper cover, ${more}, operations: [{ do: replace, done: ${done} }] }]`;

test.each([
  ['alignment: { done: 2026-10-12, result: within range }', 1],
  ['alignment: { done: 2026-10-10, result: within range }', 0],
  ['alignment: { done: 2026-10-11, result: within range }', 0],
  ['alignment: { done: 2026-10-12, result: not required }', 0],
])('a sensor calibrated on the 11th, %s', (alignment, count) => {
  const found = early(`verify: { ${alignment}, ${radar('2026-10-11')} }`);
  expect(found).toEqual(
    Array.from({ length: count }, () => ['calibration of front radar', 'the wheel alignment (2026-10-12)']),
  );
});

test('hours tell on one day, and only both of them', () => {
  const scan = (aligned: string, scanned: string): string =>
    `verify: { ${radar(aligned)}, scan_after: { done: ${scanned} } }`;
  expect(early(scan('2026-10-11T10:00', '2026-10-11T09:59'))).toHaveLength(1);
  expect(early(scan('2026-10-11T10:00', '2026-10-11T10:00'))).toEqual([]);
  expect(early(scan('2026-10-11T10:00', '2026-10-11'))).toEqual([]);
  expect(early(scan('2026-10-11', '2026-10-11T00:01'))).toEqual([]);
});

test.each([
  ['Front cover', 'front radar', 1],
  ['Cover', 'front radar', 1],
  ['Front cover', 'radar', 1],
  ['Rear cover', 'front radar', 0],
  ['Front cover', 'rear left radar', 0],
  ['Front cover', 'front camera', 0],
])('%s fitted after %s was set', (name, sensor, count) => {
  expect(early(`${cover(name, '2026-10-12')}\nverify: { ${radar('2026-10-11', sensor)} }`)).toHaveLength(
    count,
  );
});

test('a cover before no radar may be fitted last, and what was not calibrated was set on no day', () => {
  const late = (more: string, kind: string): string =>
    `${cover('Front cover', '2026-10-12', more)}\nverify: { ${radar('2026-10-11', 'front radar', kind)} }`;
  expect(early(late('radar_behind: false', ''))).toEqual([]);
  expect(early(late('radar_behind: true', ', kind: not required'))).toEqual([]);
  expect(early(late('radar_behind: true', ', kind: static'))).toHaveLength(1);
});

test('what comes too early is told once, with all that comes before it', () => {
  const text = `verify: { scan_after: { done: 2026-10-09 }, restraints: { done: 2026-10-10 }, high_voltage: { done: 2026-10-11 } }`;
  expect(early(text)).toEqual([
    [
      'scan after the repair',
      'the completion of the restraint system (2026-10-10), the re-commissioning of the traction voltage (2026-10-11)',
    ],
  ]);
});

test('a skin is hemmed on first, and painted with the door off the vehicle', () => {
  const skin = (kind: string, joint: string): string =>
    `parts: [{ id: s, kind: ${kind}, operations: [{ do: replace, ${joint} done: 2026-10-08 }, { do: refinish, off_vehicle: true, done: 2026-10-09 }] }]`;
  expect(early(skin('door skin', 'joints: [{ to: d, method: hem }],'))).toEqual([]);
  expect(early(skin('door', ''))).toHaveLength(1);
});

test('painting and fitting are compared part by part', () => {
  const part = (id: string, painted: string, fitted: string): string =>
    `{ id: ${id}, kind: fender, operations: [{ do: refinish, off_vehicle: true, done: ${painted} }, { do: replace, done: ${fitted} }] }`;
  const two = (one: string, other: string): string => `parts: [${one}, ${other}]`;
  expect(early(two(part('a', '2026-10-07', '2026-10-08'), part('b', '2026-10-09', '2026-10-10')))).toEqual(
    [],
  );
  expect(
    early(two(part('a', '2026-10-09', '2026-10-08'), part('b', '2026-10-09', '2026-10-10'))),
  ).toHaveLength(1);
});
