import type { FactNames } from '../../generated/fact-names.ts';
import { thicknessRange } from '../../steel/answer/thickness-range.ts';
import { weldability } from '../../steel/answer/weldability.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, known, tabled, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { isTwinOnSamePage, twinDifference } from './twin-difference.ts';

type DoubtFact =
  | 'part.material_ambiguous'
  | 'part.material_question'
  | 'part.weldability'
  | 'part.coating_agrees'
  | 'part.coating_contradiction'
  | 'part.thickness_fits'
  | 'part.thickness_range'
  | 'part.twin_differs'
  | 'part.twin_on_same_page'
  | 'part.twin_difference';

/** What of the stated material is open, unlikely, or worth knowing at the welding bench. */
export function partMaterialDoubts(
  survey: Survey,
  one: PartSurvey,
): Readonly<Record<DoubtFact & FactNames['part'], Fact>> {
  const { part, at, material } = one;
  const grade = `${at}/grade`;
  const coating = coatingContradiction(one);
  const range = scope(one);
  const thicknessMm = quantityOf(part.thickness, 'length');
  const fits =
    range === undefined ||
    thicknessMm === undefined ||
    (thicknessMm >= range.minMm && thicknessMm <= range.maxMm);
  const twin = twinDifference(survey, one);
  return {
    'part.material_ambiguous': computed(material.ambiguity !== undefined, grade),
    'part.material_question': computedOr(question(material), grade, 'The grade has one reading.'),
    'part.weldability': carbon(one),
    'part.coating_agrees': computed(coating === undefined, `${at}/coating`),
    'part.coating_contradiction': computedOr(coating, `${at}/coating`, 'Nothing disagrees.'),
    'part.thickness_fits': computed(fits, `${at}/thickness`),
    'part.thickness_range':
      range === undefined
        ? unknown('For which thickness the standard of the grade is written is not known.', grade)
        : tabled(
            `${range.standard} is written for ${range.minMm} to ${range.maxMm} mm`,
            'The range is from memory of the standard.',
            grade,
          ),
    'part.twin_differs': computed(twin !== undefined, at),
    'part.twin_on_same_page': computed(twin !== undefined && isTwinOnSamePage(survey, one), grade),
    'part.twin_difference': computedOr(twin, at, 'Nothing differs from the same part of the other side.'),
  };
}

/** Of a grade that stands for nothing the question is what it should be, also where no class stands beside it. */
function question({ ambiguity, mistyped, reason }: PartSurvey['material']): string | undefined {
  return ambiguity ?? (mistyped === true ? reason : undefined);
}

function carbon({ at, material }: PartSurvey): Fact {
  const place = `${at}/grade`;
  const found = weldability(material.readings);
  if (found === undefined) return unknown('No composition is on record for the grade.', place);
  const [ce, cet, pcm] = [found.ce, found.cet, found.pcm].map((value) => value.toFixed(2));
  const kind = found.kind === 'typical' ? 'typical composition' : 'limits of the analysis';
  return known(
    `CE ${ce ?? ''}, CET ${cet ?? ''}, Pcm ${pcm ?? ''} (${kind})`,
    'table',
    place,
    `Computed from the ${kind}: ${found.source}.`,
  );
}

/** The widest range of all readings; undefined where that of one is not known. */
function scope({ material }: PartSurvey): ReturnType<typeof thicknessRange> {
  const [first, ...others] = material.readings.map((one) => thicknessRange(one.standard));
  let widest = first;
  for (const range of others) {
    if (widest === undefined || range === undefined) return undefined;
    widest = {
      standard:
        widest.standard === range.standard ? widest.standard : `${widest.standard} / ${range.standard}`,
      minMm: Math.min(widest.minMm, range.minMm),
      maxMm: Math.max(widest.maxMm, range.maxMm),
    };
  }
  return widest;
}

/** "zinc" is also said of the alloyed zinc coatings, so only what is no zinc at all disagrees with it. */
function coatingContradiction({ part, material }: PartSurvey): string | undefined {
  const ofGrade = material.coating;
  if (part.coating === undefined || ofGrade === undefined || part.coating === ofGrade) return undefined;
  const zincs = [part.coating, ofGrade].filter((one) => one === 'zinc' || one.startsWith('zinc-'));
  if (zincs.length === 2 && (part.coating === 'zinc' || ofGrade === 'zinc')) return undefined;
  return `The grade ${part.grade ?? ''} carries ${shown(ofGrade)}, but the coating is stated as ${part.coating}.`;
}

function shown(coating: string): string {
  return coating === 'none' ? 'no coating' : coating;
}
