import { firstOutside } from '../outside.ts';
import type { HowSure, StrengthKind } from './strength-answer.ts';

export type WeldSoftening =
  | {
      readonly ok: true;
      /** What the softest place beside a weld keeps, in per cent of the sheet. */
      readonly leastPercent: number;
      readonly mostPercent: number;
      readonly of: 'hardness' | 'tensile strength';
      readonly howSure: HowSure;
      readonly source: string;
    }
  | { readonly ok: false; readonly reason: string };

const spotWelds =
  'hardness below the transformation beside spot welds (hj.hwi.com.cn, 20210624002): 1500 MPa press-hardened −29 to −36 %, DP780 none, DP980 −17 %, DP1180 −25 %';
const haz = 'EN 1999-1-1, table 3.2b, factors of the heat-affected zone (MIG)';

/**
 * Softening of the zone beside a weld, as measured, by kind of sheet. An arc keeps it hot for longer than the spot welds
 * that the steels were measured at: a dual-phase steel therefore gets as its least what the next stronger one lost
 * (MAG joints of 800 MPa dual-phase sheet do break in the soft zone, although spot welds of 780 showed none).
 */
export function weldSoftening(kind: StrengthKind, tensileMpa?: number): WeldSoftening {
  const off = firstOutside([['tensile strength before', tensileMpa ?? 500, 100, 2200, 'MPa']]);
  if (off !== undefined) return { ok: false, reason: off };
  switch (kind) {
    case 'press-hardened':
      return { ...hardness(64, 71), howSure: 'published figure', source: spotWelds };
    case 'martensitic':
      return { ...hardness(64, 71), howSure: 'common practice', source: `as press-hardened: ${spotWelds}` };
    case 'dual-phase':
      return { ...dualPhase(tensileMpa), howSure: 'published figure', source: spotWelds };
    case 'complex-phase':
      return { ...dualPhase(tensileMpa), howSure: 'common practice', source: `as dual-phase: ${spotWelds}` };
    case 'mild':
      return {
        ...tensile(100, 100),
        howSure: 'from memory',
        source: 'EN 1993-1-8: no reduction beside welds of structural steel up to S460',
      };
    case 'TRIP':
    case 'high-strength low-alloy':
    case 'bake-hardened':
      return { ok: false, reason: `no measurement of ${kind} steel beside a weld is at hand` };
    case 'aluminium 6xxx T6':
      return { ...tensile(47, 67), howSure: 'published figure', source: `${haz}: 6060, 6061, 6063, 6005A` };
    case 'aluminium 6xxx T4':
      return { ...tensile(83, 83), howSure: 'published figure', source: `${haz}: 6061` };
    case 'aluminium 5xxx O':
      return { ...tensile(100, 100), howSure: 'published figure', source: `${haz}: 5083` };
    case 'aluminium 5xxx H':
      return {
        ...tensile(79, 96),
        howSure: 'from memory',
        source: `${haz}: 5083 H12 0.96, H14 0.90; 5754 H14 0.79 from memory`,
      };
    case 'aluminium 7xxx':
      return {
        ok: false,
        reason: 'no factor for 7xxx sheet beside a weld was read; much of it is not welded',
      };
  }
}

interface Share {
  readonly ok: true;
  readonly leastPercent: number;
  readonly mostPercent: number;
  readonly of: 'hardness' | 'tensile strength';
}

function hardness(leastPercent: number, mostPercent: number): Share {
  return { ok: true, leastPercent, mostPercent, of: 'hardness' };
}

function tensile(leastPercent: number, mostPercent: number): Share {
  return { ok: true, leastPercent, mostPercent, of: 'tensile strength' };
}

function dualPhase(tensileMpa: number | undefined): Share {
  if (tensileMpa === undefined) return hardness(64, 100);
  if (tensileMpa <= 780) return hardness(83, 100);
  if (tensileMpa <= 980) return hardness(75, 83);
  return hardness(64, tensileMpa <= 1180 ? 75 : 71);
}
