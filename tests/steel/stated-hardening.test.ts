import { describe, expect, test } from 'vitest';
import { readDesignation } from '../../src/steel/reading/read-designation.ts';
import { settleMaterial } from '../../src/steel/settling/settle-material.ts';

// EN 10268 and EN 10130 sheet is cold-rolled for forming and never hardened; EN 10083-3 boron steel and martensitic sheet are.

describe('a name that says that it is hardened', () => {
  test.each([
    'HC340LA press hardened',
    'HC340LA hardened',
    'DC04 quenched',
    'DC04 partially hardened',
    'HC340LA with soft zone',
    'CR340LA hardened',
  ])('%s: one of the two is wrong, and hardened steel counts', (grade) => {
    const reading = readDesignation(grade);
    expect(reading.known && reading.ambiguity).toMatch(/one of the two is wrong/u);
    expect(settleMaterial({ grade }).class).toBe('press-hardened');
    expect(settleMaterial({ grade }).ambiguity).toBeDefined();
  });

  test.each(['22MnB5 hardened', '22MnB5 with soft zone', 'MS1300 hardened'])(
    '%s is what it says',
    (grade) => {
      const reading = readDesignation(grade);
      expect(reading.known && (reading.ambiguity ?? '')).not.toMatch(/one of the two is wrong/u);
    },
  );

  test('of aluminium the word says something else', () => {
    const reading = readDesignation('6016-T6 hardened');
    expect(reading.known && (reading.ambiguity ?? '')).not.toMatch(/one of the two is wrong/u);
  });
});
