import { gradeTable } from './grade-table.ts';
import type { Material } from './material.ts';
import { materialOfRow } from './material.ts';
import { steelFamily } from './steel-family.ts';
import type { StrengthClass } from './strength-class.ts';
import { classOfTensile, steelRank, strongest } from './strength-class.ts';
import { materialsOfStrength } from './strength-name.ts';

/** Share by which the yield of a grade may miss a spoken number: the trade says 600 for 590. */
const spoken = 0.03;

/** Below this a press-hardened grade is the soft partner of a tailored blank and goes by its whole name, yield in MPa. */
const hardenedYieldFromMpa = 900;

/**
 * What a number without a unit can be, the strongest first: a tensile strength in MPa as in DP600, or a yield as in HC340LA;
 * with the letter of press hardening behind it (1500P, 1500HS) a class after hardening. Undefined where it can be neither.
 */
export function materialsOfNumber(key: string, shown: string): readonly Material[] | undefined {
  const match = /^(\d{3,4})(P|HP|PH|HF|HS)?$/.exec(key);
  const number = Number(match?.[1]);
  if (match === null || number < 200 || number > 2200 || number % 5 !== 0) return undefined;
  if (match[2] !== undefined) return number < 1200 ? undefined : materialsOfStrength(shown, number);
  return [...materialsOfStrength(shown, number), ofYield(shown, number)].sort(
    (a, b) => (steelRank(b.class) ?? 0) - (steelRank(a.class) ?? 0),
  );
}

function ofYield(shown: string, yieldMpa: number): Material {
  const classes: StrengthClass[] = [classOfTensile(yieldMpa)];
  for (const rows of gradeTable().byKey.values()) {
    for (const row of rows) {
      const near = Math.abs((row.yieldMinMpa ?? 0) - yieldMpa) <= spoken * yieldMpa;
      if (!near || (row.state === 'hardened' && yieldMpa < hardenedYieldFromMpa)) continue;
      const one = materialOfRow(row, undefined, 'table').class;
      if (steelRank(one) !== undefined) classes.push(one);
    }
  }
  return {
    designation: shown,
    standard: 'stated number, taken as yield',
    family: steelFamily('unnamed').word,
    class: strongest(classes) ?? 'press-hardened',
    yieldMinMpa: yieldMpa,
    condition: 'unknown',
    mark: 'practice',
    from: 'strength',
  };
}
