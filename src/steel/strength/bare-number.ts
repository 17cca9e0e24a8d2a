import type { Material } from '../material.ts';
import { strongestFirst } from '../reading/merge-readings.ts';
import { steelFamily } from '../steel-family.ts';
import { pressHardenedFromMpa } from '../strength-class.ts';
import { materialOfYield, materialsOfTensile } from './strength-materials.ts';

export interface NumberReadings {
  readonly readings: readonly Material[];
  /** What the number or its letters leave open, and what would settle it. */
  readonly ambiguity: string;
}

/**
 * What a number without a unit can be, the strongest first: a tensile strength in MPa as in DP600, or a yield as in HC340LA; with
 * the letters of press hardening behind it (1500P, 1500HS) a class after hardening; with a temper behind it (1500 F, 1470T4) that,
 * or an aluminium alloy. Undefined where it can be none of them.
 */
export function materialsOfNumber(key: string, shown: string): NumberReadings | undefined {
  const match = /^(\d{3,4}A?)(P|HP|PH|HF|HS|F|O|W|UW|H\d{1,3}|T\d{1,3}[A-Z]?)?$/.exec(key);
  const number = Number.parseInt(match?.[1] ?? '', 10);
  if (match === null || !(number >= 200 && number <= 2200)) return undefined;
  const letters = match[2];
  if (letters === undefined) return number % 5 === 0 && !key.endsWith('A') ? bare(shown, number) : undefined;
  const temper = /^(?:F|O|W|H\d{1,3}|T\d{1,3}[A-Z]?)$/.test(letters);
  if (temper && number >= 1000) return alloyOrSteel(shown, number);
  if (number < pressHardenedFromMpa || temper) return undefined;
  return {
    readings: materialsOfTensile(shown, number),
    ambiguity: `"${shown}" may be press-hardened steel by a shop's own short name, or another steel of that strength. The stronger counts; state the grade.`,
  };
}

function bare(shown: string, number: number): NumberReadings {
  return {
    readings: strongestFirst([...materialsOfTensile(shown, number), materialOfYield(shown, number)]),
    ambiguity: `"${shown}" is a number without a unit: it could be a tensile strength, a yield, a size or a part code. The strongest reading counts; state the grade, or the strength with its unit, as "1500 MPa".`,
  };
}

/** Alloys of the first two thousands are no usual body sheet, and F, O, W, T and H stand behind shops' names of steels as well. */
function alloyOrSteel(shown: string, number: number): NumberReadings {
  const aluminium: Material = {
    designation: shown,
    standard: 'EN 573-3 / JIS H 4000',
    family: steelFamily('aluminium').word,
    class: 'aluminium',
    condition: 'unknown',
    mark: 'memory',
    from: 'grammar',
  };
  // Steel is made in steps of ten.
  if (number % 10 !== 0)
    return {
      readings: [aluminium],
      ambiguity: `"${shown}" may be an aluminium alloy with its temper. State it with its prefix, as "EN AW-${shown}".`,
    };
  return {
    readings: [...materialsOfTensile(shown, number), aluminium],
    ambiguity: `"${shown}" may be an aluminium alloy with its temper, or a shop's short name for steel of ${number} MPa. State aluminium with its prefix, as "EN AW-${shown}", or the grade of the steel.`,
  };
}
