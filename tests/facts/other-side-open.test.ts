import { expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

/** Why the radar of the other side is asked for, of the first calibration; `answered` where it is not. */
function otherSide(cover: string, ...sensors: readonly string[]): unknown {
  const rows = sensors.map((sensor) => `{ sensor: ${sensor}, done: 2026-10-12 }`).join(', ');
  const fact = factsOf(`${tarn}\nparts: [{ id: c, ${cover} }]\nverify: { calibrations: [${rows}] }`).fact(
    'step.other_side_open',
    '/verify/calibrations/0',
  );
  return fact.known ? fact.value : 'answered';
}

const cover = 'name: Rear cover, kind: bumper cover, operations: [{ do: replace }]';
const off = 'Rear cover came off';

// What reaches across the vehicle disturbs both sides; common practice.
test.each<readonly [string, readonly string[], string]>([
  [cover, ['rear radar left'], off],
  [cover, ['corner radar left'], off],
  [cover, ['rear radar left', 'rear radar right'], 'answered'],
  [cover, ['rear radar left', 'both rear radars'], 'answered'],
  [cover, ['rear radar left', 'front radar right'], off],
  [cover, ['rear radar left', 'rear camera right'], off],
  [cover, ['rear radars left and right'], 'answered'],
  [cover, ['rear radar'], 'answered'],
  [cover, ['rear camera left'], 'answered'],
  [cover, ['front radar left'], 'answered'],
  [`${cover}, side: left`, ['rear radar left'], 'answered'],
  [`${cover}, radar_behind: false`, ['rear radar left'], 'answered'],
  [
    'name: Rear rail, kind: rear rail, side: left, operations: [{ do: straighten }]',
    ['rear radar left'],
    'answered',
  ],
])('%s: %s', (part, sensors, expected) => {
  expect(otherSide(part, ...sensors)).toBe(expected);
});
