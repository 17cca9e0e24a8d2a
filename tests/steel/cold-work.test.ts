import { describe, expect, it } from 'vitest';
import { settleMaterial } from '../../src/steel/settling/settle-material.ts';

// EN 10088-2 (from memory): +C700 to +C1300 tensile, +CP350 to +CP1100 proof strength; annealed 1.4310 600–950 MPa, 1.4318 650–850,
// 1.4301 540–750. EN 10139: DC01+C390 390–540 MPa (grades.csv, seen).
describe('strength from cold work', () => {
  it.each([
    [{ grade: '1.4310+C1000' }, { is: true, toMpa: 1000 }],
    [{ grade: '1.4310+C1500' }, { is: true, toMpa: 1500 }],
    [{ grade: '1.4310+C1700' }, { is: true, toMpa: 1700 }],
    [{ grade: '1.4310+CP1100' }, { is: true, toMpa: 1100 }],
    [{ grade: '1.4318+CP500' }, { is: true, toMpa: 500 }],
    [{ grade: '1.4301+2H' }, { is: true }],
    [
      { grade: '1.4310', tensileMpa: 1000 },
      { is: true, toMpa: 1000 },
    ],
    [
      { class: 'stainless', tensileMpa: 851 },
      { is: true, toMpa: 851 },
    ],
    [{ grade: 'DC01+C390' }, { is: true, toMpa: 390 }],
    [{ grade: 'DC01+C590' }, { is: true, toMpa: 590 }],
    [
      { grade: 'DC01+C590', tensileMpa: 640 },
      { is: true, toMpa: 640 },
    ],
    [{ grade: 'DC01+LC' }, { is: false }],
    [{ grade: 'DC01' }, { is: false }],
    [{ grade: 'HC340LA' }, { is: false }],
    [{ grade: '22MnB5' }, { is: false }],
    [{ grade: '1.4301+2B' }, { is: false }],
    [{ grade: '1.4301', tensileMpa: 600 }, { is: false }],
    [{ class: 'stainless', tensileMpa: 699 }, { is: false }],
    [{ grade: '1.4509' }, { is: false }],
  ] as const)('%j: %j', (stated, expected) => {
    expect(settleMaterial(stated).coldWork).toEqual(expected);
  });

  it.each([
    { grade: '1.4310' },
    { grade: '1.4301' },
    { class: 'stainless' },
    { class: 'stainless', tensileMpa: 850 },
    { class: 'stainless', tensileMpa: 700 },
    { grade: '1.4310', tensileMpa: 800 },
  ] as const)('%j is asked for: annealed or not', (stated) => {
    const { coldWork } = settleMaterial(stated);
    expect(coldWork).toMatchObject({ is: 'unknown' });
    expect(coldWork.is === 'unknown' ? coldWork.reason : '').toContain('annealed or cold-hardened');
  });

  it('cold-hardened stainless steel is no contradiction to its number', () => {
    expect(settleMaterial({ grade: '1.4318', tensileMpa: 1000 }).contradictions).toEqual([]);
    expect(settleMaterial({ grade: '1.4310+C1000', tensileMpa: 1500 }).contradictions.length).toBe(1);
  });
});
