import { describe, expect, it } from 'vitest';
import type { Material } from '../../src/steel/material.ts';
import { mergeReadings } from '../../src/steel/reading/merge-readings.ts';

/** Every key of a reading: one that Material gains is missed here by the compiler. */
const one: Required<Material> = {
  designation: 'HC340LA',
  standard: 'EN 10268',
  family: 'high-strength low-alloy',
  class: 'high-strength',
  weakestClass: 'mild',
  tensileMinMpa: 410,
  tensileMaxMpa: 510,
  yieldMinMpa: 340,
  yieldMaxMpa: 420,
  yieldTypicalMpa: 350,
  tensileTypicalMpa: 430,
  tensileMinOnlyIf: 'ordered with T',
  coating: 'zinc',
  coatingMass: { grams: 100, counted: 'both sides together' },
  condition: 'as delivered',
  mark: 'seen',
  from: 'table',
};

const others: Required<Omit<Material, 'standard' | 'mark'>> = {
  designation: 'HC300LA',
  family: 'isotropic',
  class: 'ultra-high-strength',
  weakestClass: 'high-strength',
  tensileMinMpa: 400,
  tensileMaxMpa: 500,
  yieldMinMpa: 330,
  yieldMaxMpa: 410,
  yieldTypicalMpa: 340,
  tensileTypicalMpa: 420,
  tensileMinOnlyIf: 'agreed',
  coating: 'none',
  coatingMass: { grams: 100, counted: 'each side' },
  condition: 'hardened',
  from: 'grammar',
};

describe('readings of one grade in several standards', () => {
  it('become one where they say the same, with both standards and the worse mark', () => {
    const other: Material = {
      ...one,
      coatingMass: { ...one.coatingMass },
      designation: 'HC 340 LA',
      standard: 'GB/T 1',
      mark: 'memory',
    };
    expect(mergeReadings([one, other])).toEqual([{ ...one, standard: 'EN 10268 / GB/T 1', mark: 'memory' }]);
  });

  it.each(Object.entries(others))('stay apart where they differ in %s', (name, value) => {
    expect(mergeReadings([one, { ...one, [name]: value }])).toHaveLength(2);
  });

  it.each(Object.keys(others).filter((name) => name !== 'designation'))(
    'stay apart where one does not have %s',
    (name) => {
      const other = { ...one };
      Reflect.deleteProperty(other, name);
      expect(mergeReadings([one, other])).toHaveLength(2);
    },
  );
});
