import type { HardnessScale } from './hardness.ts';
import { tensileOfHardness } from './hardness.ts';
import type { StrengthReading } from './strength-reading.ts';
import { materialsOfTensile } from './strength-materials.ts';

const scales: Readonly<Record<string, HardnessScale>> = {
  HV: 'vickers',
  HB: 'brinell',
  HBW: 'brinell',
  HBS: 'brinell',
  HRC: 'rockwell_c',
};

/** 48-52 HRC, 400 to 450 HV. */
const rangeForm = /^(\d{2,3}) ?(?:-|TO) ?(\d{2,3}) ?(HV|HBW|HBS|HB|HRC)(?:10|30|5|1)?$/;

/** 470 HV, 470 HV10, HV 470, 45 HRC, 150 HBW 2.5/187.5. */
const form =
  /^(?:(\d{2,3}(?:\.\d)?) ?(HV|HBW|HBS|HB|HRC)(?: ?\d{1,2}(?:\.\d)?(?:\/\d{1,4}(?:\.\d)?)?)?|(HV|HBW|HBS|HB|HRC)(?:(?:1|5|10|30)(?= |:))?[ :=]{0,2}(\d{2,3}(?:\.\d)?))$/;

/** Share by which a tensile strength from a hardness may be off; ISO 18265 gives no more than a general warning. Practice. */
const uncertainty = 0.1;

export function isHardnessText(text: string): boolean {
  const one = plain(text);
  return form.test(one) || rangeForm.test(one);
}

/** A hardness as the tensile strengths that it stands for by ISO 18265, approximately: the upper end counts. */
export function readHardness(shown: string): StrengthReading | undefined {
  const stated = statedHardness(plain(shown));
  if (stated === undefined) return undefined;
  const [mpa, mostMpa] = [stated.least, stated.most].map((value) =>
    stated.scale === undefined ? undefined : tensileOfHardness(stated.scale, value),
  );
  if (mpa === undefined || mostMpa === undefined)
    return {
      reason: `${shown} lies outside the table by which hardness is converted into tensile strength (ISO 18265: 80 to 650 HV, 76 to 428 HBW, 20 to 58 HRC). State the grade, or the tensile strength with its unit.`,
    };
  const low = Math.round(mpa * (1 - uncertainty));
  const high = Math.round(mostMpa * (1 + uncertainty));
  const [strongest, ...others] = materialsOfTensile(shown, low, high);
  const [byHigh] = materialsOfTensile(shown, high);
  const [byLow] = materialsOfTensile(shown, low).slice(-1);
  if (strongest === undefined || byHigh === undefined || byLow === undefined) return undefined;
  return {
    mpa,
    readings: [{ ...strongest, class: byHigh.class, weakestClass: byLow.class }, ...others],
    ambiguity: `"${shown}" is a hardness, not a grade: by ISO 18265 it goes with about ${mpa === mostMpa ? '' : `${mpa} to `}${mostMpa} MPa, give or take a tenth (${low} to ${high} MPa). The upper end counts; state the grade.`,
    assumed: [],
  };
}

interface StatedHardness {
  readonly scale: HardnessScale | undefined;
  readonly least: number;
  readonly most: number;
}

function statedHardness(text: string): StatedHardness | undefined {
  const [, low, high, of] = rangeForm.exec(text) ?? [];
  if (low !== undefined && high !== undefined) {
    const [least = 0, most = 0] = [Number(low), Number(high)].toSorted((a, b) => a - b);
    return { scale: scales[of ?? ''], least, most };
  }
  const match = form.exec(text);
  if (match === null) return undefined;
  const [, before, behindIt, beforeIt, behind] = match;
  const value = Number(before ?? behind);
  return { scale: scales[behindIt ?? beforeIt ?? ''], least: value, most: value };
}

function plain(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/(\d),(?=\d)/g, '$1.')
    .replaceAll(/[\p{Pd}\u2212]/gu, '-')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
