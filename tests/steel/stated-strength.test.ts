import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { classOfTensile, steelRank } from '../../src/steel/strength-class.ts';

const tell = (text: string) => describeDesignation(text, { find: false });

// A strength names no family, and sheets quote the yield as often as the tensile strength.
describe('a strength in place of a grade', () => {
  it.each(['300 MPa', '340 MPa', '440 MPa', '590 MPa', '980 MPa'])(
    '%s counts as the bare number does',
    (text) => {
      const bare = tell(text.replace(' MPa', ''));
      expect(tell(text)).toMatchObject({ known: 'ambiguous', class: bare.class });
      expect(tell(text).readings.map((one) => [one.yield?.min, one.tensile?.min])).toEqual(
        bare.readings.map((one) => [one.yield?.min, one.tensile?.min]),
      );
    },
  );

  it('lists no yield where it can raise the class no more', () => {
    expect(tell('1300 MPa').readings.map((one) => one.yield)).toEqual([null, null]);
    expect(tell('1300 MPa').class).toBe('press-hardened');
  });

  // NIST SP 811: 217 ksi is 1496 MPa; ISO 18265: 1485 MPa 460 HV, 1520 MPa 470 HV.
  it('keeps class, equivalents and hardness', () => {
    expect(tell('217 ksi')).toMatchObject({ class: 'press-hardened', equivalents: { mpa: 1496, ksi: 217 } });
    expect(tell('217 ksi').hardness?.vickers).toBeGreaterThanOrEqual(460);
    expect(tell('217 ksi').hardness?.vickers).toBeLessThanOrEqual(470);
    expect(tell('1.5 GPa')).toMatchObject({ class: 'press-hardened', equivalents: { mpa: 1500 } });
    // 590 MPa as a tensile strength, though the yield reading counts: 575 MPa 180 HV, 610 MPa 190 HV.
    expect(tell('590 MPa').equivalents?.mpa).toBe(590);
    expect(tell('590 MPa').hardness?.vickers).toBeGreaterThanOrEqual(180);
    expect(tell('590 MPa').hardness?.vickers).toBeLessThanOrEqual(190);
  });

  it.each([
    ['Rm 980 MPa', 'tensile'],
    ['tensile strength 980 MPa', 'tensile'],
    ['980 MPa UTS', 'tensile'],
    ['100 kgf/mm2', 'tensile'],
    ['Re 340 MPa', 'yield'],
    ['Rp0.2 340 MPa', 'yield'],
    ['yield 340 MPa', 'yield'],
  ])('%s says that it is a %s', (text, of) => {
    const { readings } = tell(text);
    expect(readings.length).toBe(1);
    expect(readings[0]?.tensile === null ? 'yield' : 'tensile').toBe(of);
  });

  it('60 kgf/mm² and 217 ksi leave the family open (grammar of the trade, from memory)', () => {
    expect(tell('60 kgf/mm2 class')).toMatchObject({ known: 'ambiguous', equivalents: { mpa: 590 } });
    expect(tell('217 ksi').known).toBe('ambiguous');
  });

  it('reads limits and ranges, and refuses what says nothing of the strength', () => {
    expect(tell('>1500 MPa')).toMatchObject({ known: 'ambiguous', class: 'press-hardened' });
    expect(tell('≥ 1500 MPa').class).toBe('press-hardened');
    expect(tell('1180-1320 MPa').class).toBe('press-hardened');
    expect(tell('max 600 MPa')).toMatchObject({ known: 'unknown', class: null });
    expect(tell('max 600 MPa').reason).toContain('from above only');
    expect(tell('-1500 MPa')).toMatchObject({ known: 'unknown', usable: false, class: null });
    expect(tell('− 1500')).toMatchObject({ usable: false });
    expect(tell('<b>1500 MPa</b>').reason).toContain('web-page text');
  });

  it('is never weaker than the band of the strength, whatever the unit', () => {
    const units = [
      ['MPa', 1],
      ['N/mm²', 1],
      ['GPa', 1000],
      ['ksi', 6.894757],
      ['kgf/mm2', 9.80665],
    ] as const;
    fc.assert(
      fc.property(fc.integer({ min: 230, max: 2400 }), fc.constantFrom(...units), (mpa, [unit, factor]) => {
        const text = `${(mpa / factor).toFixed(unit === 'GPa' ? 3 : 0)} ${unit}`;
        const stated = Number.parseFloat(text) * factor;
        const { class: counts, known } = tell(text);
        expect([text, known]).toEqual([text, 'ambiguous']);
        // Rounded by up to one unit of the gauge.
        const least = steelRank(classOfTensile(stated * 0.998)) ?? Infinity;
        expect(steelRank(counts ?? 'aluminium') ?? -1).toBeGreaterThanOrEqual(least);
      }),
    );
  });
});

// ISO 18265:2013, table A.1 (copy of its predecessor): 470 HV 1520 MPa, 150 HB 505 MPa (Brinell 0.95 of Vickers: 158 HV), 45 HRC 1440 MPa.
describe('a hardness in place of a grade', () => {
  it.each([
    ['470 HV', 1520],
    ['470 HV10', 1520],
    ['HV 470', 1520],
    ['45 HRC', 1443],
    ['150 HB', 504],
    ['150 HBW', 504],
    ['20 HRC', 770],
  ])('%s goes with about %d MPa', (text, mpa) => {
    const answer = tell(text);
    expect(answer.known).toBe('ambiguous');
    expect(Math.abs((answer.equivalents?.mpa ?? 0) - mpa)).toBeLessThanOrEqual(6);
    expect(answer.reason).toContain('ISO 18265');
  });

  it('counts by the upper end of what it may be', () => {
    expect(tell('470 HV').class).toBe('press-hardened');
    // About 1130 MPa: a tenth more is above 1200, where boron steel begins.
    expect(tell('350 HV')).toMatchObject({ class: 'press-hardened', weakest_class: 'ultra-high-strength' });
    expect(tell('90 HV').class).toBe('mild');
  });

  it.each(['700 HV', '60 HRC', '500 HBW', '10 HRC'])('%s lies outside the table', (text) => {
    expect(tell(text)).toMatchObject({ known: 'unknown', class: null });
    expect(tell(text).reason).toContain('outside the table');
  });
});
