import { gradeTable } from '../table/grade-table.ts';
import type { Material } from '../material.ts';
import { materialOfRow } from '../material.ts';
import { strongestFirst } from '../reading/merge-readings.ts';
import { classInFamily, steelFamily } from '../steel-family.ts';
import type { StrengthClass } from '../strength-class.ts';
import { classOfTensile, pressHardenedFromMpa, steelRank, strongest } from '../strength-class.ts';

/** Share by which the yield of a grade may miss a spoken number: the trade says 600 for 590. */
const spoken = 0.03;

/** Below this a press-hardened grade is the soft partner of a tailored blank and goes by its whole name, yield in MPa. */
const hardenedYieldFromMpa = 900;

/**
 * What a tensile strength in MPa without a grade can be, the strongest first. `upToMpa` is what a rounded figure may stand for: it
 * counts for the class, but makes no steel press-hardened.
 */
export function materialsOfTensile(
  shown: string,
  tensileMpa: number,
  maxMpa?: number,
  upToMpa = tensileMpa,
): readonly Material[] {
  const meantMpa = Math.max(tensileMpa, Math.min(upToMpa, pressHardenedFromMpa - 1));
  const unnamed = steelFamily('unnamed');
  const steel: Material = {
    designation: shown,
    standard: 'stated strength',
    family: unnamed.word,
    class: classInFamily(unnamed, meantMpa, undefined),
    tensileMinMpa: tensileMpa,
    ...(maxMpa === undefined ? {} : { tensileMaxMpa: maxMpa }),
    condition: 'unknown',
    mark: 'practice',
    from: 'strength',
  };
  if ((maxMpa ?? tensileMpa) < pressHardenedFromMpa) return [steel];
  return [
    { ...steel, family: steelFamily('press_hardening').word, class: 'press-hardened', condition: 'hardened' },
    {
      ...steel,
      family: steelFamily('martensitic').word,
      class: 'ultra-high-strength',
    },
  ];
}

/** What a yield in MPa without a grade can be: the strongest class of any grade whose yield lies there. */
export function materialOfYield(shown: string, yieldMpa: number): Material {
  const classes: StrengthClass[] = [classOfTensile(yieldMpa)];
  for (const row of gradeTable().allRows()) {
    const near = Math.abs((row.yieldMinMpa ?? 0) - yieldMpa) <= spoken * yieldMpa;
    if (!near || (row.state === 'hardened' && yieldMpa < hardenedYieldFromMpa)) continue;
    const one = materialOfRow(row, {}, 'table').class;
    if (steelRank(one) !== undefined) classes.push(one);
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

/** What a strength can be that may be a tensile strength or a yield, the strongest first. */
export function materialsOfEither(
  shown: string,
  mpa: number,
  maxMpa?: number,
  upToMpa = mpa,
): readonly Material[] {
  const tensile = materialsOfTensile(shown, mpa, maxMpa, upToMpa);
  // From there the tensile strength counts as press-hardened already.
  if (mpa >= pressHardenedFromMpa) return tensile;
  return strongestFirst([...tensile, materialOfYield(shown, mpa)]);
}
