import type { HardnessScale } from './hardness.ts';
import { tensileOfHardness } from './hardness.ts';
import type { StrengthReading } from './read-strength.ts';
import { materialsOfTensile } from './strength-materials.ts';

const scales: Readonly<Record<string, HardnessScale>> = {
  HV: 'vickers',
  HB: 'brinell',
  HBW: 'brinell',
  HBS: 'brinell',
  HRC: 'rockwell_c',
};

/** 470 HV, 470 HV10, HV 470, 45 HRC, 150 HBW 2.5/187.5. */
const form =
  /^(?:(\d{2,3}(?:\.\d)?) ?(HV|HBW|HBS|HB|HRC)(?: ?\d{1,2}(?:\.\d)?(?:\/\d{1,4}(?:\.\d)?)?)?|(HV|HBW|HBS|HB|HRC)(?:(?:1|5|10|30)(?= |:))?[ :=]{0,2}(\d{2,3}(?:\.\d)?))$/;

/** Share by which a tensile strength from a hardness may be off; ISO 18265 gives no more than a general warning. Practice. */
const uncertainty = 0.1;

export function isHardnessText(text: string): boolean {
  return form.test(plain(text));
}

/** A hardness as the tensile strengths that it stands for by ISO 18265, approximately: the upper end counts. */
export function readHardness(shown: string): StrengthReading | undefined {
  const match = form.exec(plain(shown));
  if (match === null) return undefined;
  const [, before, scaleBehind, scaleBefore, behind] = match;
  const scale = scales[scaleBehind ?? scaleBefore ?? ''];
  const mpa = scale === undefined ? undefined : tensileOfHardness(scale, Number(before ?? behind));
  if (mpa === undefined)
    return {
      reason: `${shown} lies outside the table by which hardness is converted into tensile strength (ISO 18265: 80 to 650 HV, 76 to 428 HBW, 20 to 58 HRC). State the grade, or the tensile strength with its unit.`,
    };
  const low = Math.round(mpa * (1 - uncertainty));
  const high = Math.round(mpa * (1 + uncertainty));
  const [strongest, ...others] = materialsOfTensile(shown, low, high);
  const [byHigh] = materialsOfTensile(shown, high);
  const [byLow] = materialsOfTensile(shown, low).slice(-1);
  if (strongest === undefined || byHigh === undefined || byLow === undefined) return undefined;
  return {
    mpa,
    readings: [{ ...strongest, class: byHigh.class, weakestClass: byLow.class }, ...others],
    ambiguity: `"${shown}" is a hardness, not a grade: by ISO 18265 it goes with about ${mpa} MPa, give or take a tenth (${low} to ${high} MPa). The upper end counts; state the grade.`,
    assumed: [],
  };
}

function plain(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/(\d),(?=\d)/g, '$1.')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
