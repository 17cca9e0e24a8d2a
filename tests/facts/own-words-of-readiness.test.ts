import { describe, expect, test } from 'vitest';
import { graverInWords } from '../../src/facts/part/damage-words.ts';
import { sideOfWords } from '../../src/facts/part/side-named.ts';
import { keyInVehicle, liesOpen } from '../../src/facts/step/where-kept.ts';

// What a person of the trade reads out of such words; no source but the words.

describe('where a key and live units lie', () => {
  test.each(['In the vehicle', 'in the cup holder', 'Left in the ignition', 'in the glove box, as always'])(
    'the key in the vehicle: %s',
    (words) => {
      expect(keyInVehicle(words)).toBe(true);
    },
  );
  test.each(['In the office', 'On the board, 20 m from the car', 'With L. Brandt', 'Key box in the store'])(
    'the key away from it: %s',
    (words) => {
      expect(keyInVehicle(words)).toBe(false);
    },
  );
  test.each([
    'On the bench beside the welder',
    'on the floor',
    'Under the bench',
    'in the boot',
    'On the workbench, cushion side up',
    'On a shelf in the parts store',
    'Locked steel cabinet, cushion side down',
    'Locked cabinet, cover down',
    'In the cage, upside down',
  ])('units in the open: %s', (words) => {
    expect(liesOpen(words)).toBe(true);
  });
  test.each([
    'Locked steel cabinet by the parts store',
    'Lock box beside the booth',
    'Cage in the yard',
    'On a shelf of the locked cabinet, cushion side up',
    'Locked cabinet, cushion side up, never upside down',
    'Locked cabinet, not cushion side down',
  ])('units put away: %s', (words) => {
    expect(liesOpen(words)).toBe(false);
  });
});

describe('the one side that a text names', () => {
  test.each([
    ['Right side at the front door, at a right angle', 'right'],
    ['Left front corner, at a right angle', 'left'],
    ['From behind, at a right angle', undefined],
    ['By a car from the left, on the right side', undefined],
    ['Hail', undefined],
  ])('%s', (words, expected) => {
    expect(sideOfWords(words)).toBe(expected);
  });
});

describe('damage that words tell of and the kind does not', () => {
  test.each([
    ['kinked at the tower, 20 mm long', 'kinked at the tower'],
    ['bent in 8 mm, with a hairline crack at the flange', 'a hairline crack at the flange'],
    ['smooth over 300 mm, slightly creased at its edge', 'slightly creased at its edge'],
  ])('%s', (words, expected) => {
    expect(graverInWords(words, ['bend'])).toBe(expected);
  });
  test.each(['no kink, not torn', 'behind the kinked skin, 60 mm long', 'smooth over 300 mm'])(
    '%s',
    (words) => {
      expect(graverInWords(words, ['bend'])).toBeUndefined();
    },
  );
  test('a kink stated says what its words say', () => {
    expect(graverInWords('kinked at the tower', ['kink'])).toBeUndefined();
    expect(graverInWords('creased at the tower', ['kink'])).toBeUndefined();
  });
});
