import { describe, expect, it } from 'vitest';
import { settleMaterial } from '../../src/steel/settling/settle-material.ts';

// Limits: HC340LA 410–510 and HC420LA 470–590 MPa (EN 10268); S550MC 600–760 (EN 10149-2); 22MnB5 1300–1650; SPFC440 at least 440
// (JIS G 3135, no maximum); HCT590X 590 (EN 10338). The tolerance of a tenth and the usual spread of a quarter are practice.
describe('a stated strength outside of what the grade promises', () => {
  it.each([
    ['HC340LA', 560, false, '410 to 510 MPa'],
    ['HC340LA', 511, false, '410 to 510 MPa'],
    ['HC340LA', 400, false, '410 to 510 MPa'],
    ['HC420LA', 600, true, '470 to 590 MPa'],
    ['S550MC', 560, true, '600 to 760 MPa'],
    ['SPFC440', 589, false, 'no maximum, and usually 550 MPa at most'],
    ['22MnB5', 1200, false, '1300 to 1650 MPa'],
    ['DP980', 950, true, '980 MPa at least'],
  ])('%s at %i MPa: another class %s', (grade, tensileMpa, changesClass, limits) => {
    const { strengthDoubt, contradictions } = settleMaterial({ grade, tensileMpa });
    expect(contradictions).toEqual([]);
    expect(strengthDoubt?.changesClass).toBe(changesClass);
    expect(strengthDoubt?.sentence).toContain(`stated as ${tensileMpa} MPa, but ${grade} has ${limits}.`);
  });

  it.each([
    ['HC340LA', 410],
    ['HC340LA', 510],
    ['HCT590X', 600],
    // 85 ksi is 586 MPa, the whole ksi of 590.
    ['HCT590X', 586],
    ['DP1000', 1000],
    ['22MnB5', 1500],
    ['SPFC440', 550],
    ['UHSS', 1500],
  ])('%s at %i MPa leaves none', (grade, tensileMpa) => {
    expect(settleMaterial({ grade, tensileMpa }).strengthDoubt).toBeUndefined();
  });

  it('what cannot be true together is a contradiction and no doubt', () => {
    const { contradictions, strengthDoubt } = settleMaterial({ grade: 'HC340LA', tensileMpa: 980 });
    expect(contradictions.length).toBe(1);
    expect(strengthDoubt).toBeUndefined();
  });
});
