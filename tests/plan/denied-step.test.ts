import { expect, test } from 'vitest';
import { deniedStep } from '../../src/plan/denied-step.ts';

test.each([
  'No, the battery stays connected.',
  'battery stays connected',
  'Battery maintainer left on to keep memory',
  'Battery left on',
  'leave it connected',
  'customer says it is dead, not isolated',
  'battery is not disconnected',
  'will be skipped',
  'the proof is skipped, no time',
  'weld without disconnecting the 12 V battery',
  'without isolation',
  'we do not disconnect on this model',
  'proof not required',
  'not needed',
  'charger remains plugged in',
])('refused: %s', (text) => {
  expect(deniedStep(text)).toMatch(/written `false`/u);
});

test.each([
  'Battery off and covered, key kept in the office.',
  'No weld before the battery is off',
  'No. 3 bay, battery on the shelf',
  'Disconnect it; nothing stays connected',
  'Both batteries off, must not be left connected over night',
  'Battery disconnected and left on the bench',
  'The proof must not be skipped',
  'Do not weld if not isolated',
  'Before the cut, of the clamped ring before the first weld, and after.',
  'Measured without disconnecting the subframe from the rail',
  'Isolate at the plug; not yet disconnected',
])('a step: %s', (text) => {
  expect(deniedStep(text)).toBeUndefined();
});
