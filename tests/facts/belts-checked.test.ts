import { describe, expect, test } from 'vitest';
import { beltDefect, saysBeltsChecked } from '../../src/facts/step/belts-checked.ts';

// What the words mean is what a person in the trade reads in them; there is no published source.
describe('whether the belts were looked at', () => {
  test.each([
    'All looked at, none renewed',
    'in order',
    'All five pulled through; no damage found',
    'Not yet driven; all looked at',
    'Left front belt renewed, not the others, which are in order',
    'None renewed, all in order',
  ])('%s: yes', (text) => {
    expect(saysBeltsChecked(text)).toBe(true);
    expect(beltDefect(text)).toBeUndefined();
  });

  test.each([
    'Not done, nothing to be seen',
    'Not checked, car was parked',
    'not checked because the car stood',
    'Not done',
    'No, nobody sat in it',
    'None',
    'not yet',
    'to be checked after the bake',
    'Nobody looked at them',
    'No time',
    'Unchecked',
    'was not looked at',
  ])('%s: no', (text) => {
    expect(saysBeltsChecked(text)).toBe(false);
  });

  test('nothing said: no', () => {
    expect(saysBeltsChecked(undefined)).toBe(false);
    expect(beltDefect(undefined)).toBeUndefined();
  });
});

describe('a belt that is bad and stays', () => {
  test.each([
    ['Rear centre belt locks, customer told', 'Rear centre belt locks'],
    ['All looked at; buckle rear left is cracked', 'buckle rear left is cracked'],
    ['Driver belt does not roll up', 'Driver belt does not roll up'],
    ['Front right frayed at the edge, not renewed', 'Front right frayed at the edge'],
    ['Rear left slow, owner informed', 'owner informed'],
  ])('%s', (text, defect) => {
    expect(beltDefect(text)).toBe(defect);
  });

  test.each([
    'Front left belt frayed and renewed, the others in order',
    'Buckle cracked, replaced by the list',
    'All five: no fraying, none damaged, nothing torn',
    'Every belt locks when it is jerked and runs back',
    'Checked for damage: none',
  ])('%s: none', (text) => {
    expect(beltDefect(text)).toBeUndefined();
  });
});
