import { describe, expect, test } from 'vitest';
import type { JointMethod } from '../../src/generated/plan-types.ts';
import { namedSkills, namesOther } from '../../src/facts/joint/joiner-qualification.ts';
import { isNoQualification } from '../../src/facts/refusals.ts';
import type { JoinedMetal } from '../../src/facts/joint/joiner-qualification.ts';

// What shops write for a qualification: common practice. ISO 9606-1 and -2 (welders of steel, of aluminium) and ISO 13585 (brazers) from
// memory; ISO 14732 (operators and setters) by its title.

const other = (text: string, method: JointMethod, ...metals: readonly JoinedMetal[]): boolean =>
  namesOther(namedSkills(text), method, new Set(metals));

describe('a qualification for another joint or metal', () => {
  test.each([
    ['ISO 9606-1 135 P BW FM1 S t1.5', 'resistance spot', 'steel'],
    ['ISO 9606-1', 'aluminium arc', 'aluminium'],
    ['ISO 9606-2 131', 'arc seam', 'steel'],
    ['ISO 14732', 'plug weld', 'steel'],
    ['resistance spot, steel', 'resistance spot', 'aluminium'],
    ['resistance spot, steel', 'arc seam', 'steel'],
    ['MAG welder, shop test W-12', 'adhesive', 'steel'],
    ['bonding and riveting, aluminium', 'arc stitch', 'aluminium'],
    ['MIG brazing, shop test 26-02', 'arc seam', 'steel'],
    ['ISO 13585', 'plug weld', 'steel'],
    ['spot welding course', 'self-piercing rivet', 'steel'],
  ] as const)('%s does not cover %s in %s', (text, method, metal) => {
    expect(other(text, method, metal)).toBe(true);
  });

  test.each([
    ['ISO 9606-1 135 P BW FM1 S t1.5', 'arc seam', 'steel'],
    ['ISO 9606-1 135', 'plug weld', 'steel'],
    ['ISO 9606-2 131', 'aluminium arc', 'aluminium'],
    ['ISO 9606', 'aluminium arc', 'aluminium'],
    ['ISO 14732 setter', 'resistance spot', 'steel'],
    ['MAG and resistance spot, steel: shop test 26-04', 'adhesive and spot', 'steel'],
    ['bonding, structural', 'adhesive and spot', 'steel'],
    ['bonding and riveting, aluminium', 'adhesive and rivet', 'aluminium'],
    ['adhesive bonder', 'blind rivet', 'aluminium'],
    ['MIG brazing', 'arc braze', 'steel'],
    ['MAG welder', 'arc braze', 'steel'],
    ['welder, shop test W-3', 'resistance spot', 'steel'],
    ['welder, shop test W-3', 'arc seam', 'steel'],
    ['body structure level 3', 'arc seam', 'aluminium'],
    ['shop test W-12 of 2026-02-03, passed', 'self-piercing rivet', 'aluminium'],
    ['ISO 9606-1; resistance spot shop test 26-02', 'resistance spot', 'steel'],
  ] as const)('%s covers, or may cover, %s in %s', (text, method, metal) => {
    expect(other(text, method, metal)).toBe(false);
  });

  test('of a stack of both metals, or of one that is not known, one named metal is enough', () => {
    expect(other('bonding, aluminium', 'adhesive and rivet', 'aluminium', 'steel')).toBe(false);
    expect(other('bonding, aluminium', 'adhesive and rivet')).toBe(false);
    expect(other('bonding, aluminium', 'adhesive and rivet', 'steel')).toBe(true);
  });
});

test.each([
  ...[
    'none',
    'in training',
    'Apprentice',
    'third-year apprentice',
    '20 years of experience',
    'experienced',
    'years in the trade',
  ],
  ...[
    'expired',
    'not certified yet',
    'no certificate',
    'Not needed',
    'long experience',
    'over 15 years at the bench',
  ],
])('"%s" is no qualification', (text) => {
  expect(isNoQualification(text)).toBe(true);
});

test.each([
  ...['ISO 9606-1', 'shop test 26-04', 'body structure level 3', 'trained and tested by the maker, 2026-03'],
  ...[
    '20 years of experience; ISO 9606-1 135',
    'apprentice, coupon of 2026-10-02 passed before T. Holm',
    'no. 4711, MAG',
  ],
])('"%s" is one', (text) => {
  expect(isNoQualification(text)).toBe(false);
});
