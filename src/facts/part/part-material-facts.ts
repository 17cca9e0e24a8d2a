import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, known, stated, statedOr, tabled, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import { materialEvidence } from '../papers/maker-evidence.ts';
import type { PartSurvey, Survey } from '../survey.ts';

type MaterialFact =
  | 'part.class'
  | 'part.family'
  | 'part.tensile'
  | 'part.yield'
  | 'part.tensile_text'
  | 'part.material_agrees'
  | 'part.material_contradiction'
  | 'part.material_evidence'
  | 'part.thickness'
  | 'part.coating'
  | 'part.zones'
  | 'part.laminated';

/** Pounds-force per square inch in one megapascal (NIST SP 811). */
const psiPerMpa = 145.0377377;

/** What the part is made of, how strong it is, and what that statement rests on. */
export function partMaterialFacts(
  survey: Survey,
  { part, at, material, pack }: PartSurvey,
): Readonly<Record<MaterialFact & FactNames['part'], Fact>> {
  const place =
    part.grade !== undefined ? `${at}/grade` : part.strength !== undefined ? `${at}/strength` : `${at}/class`;
  const note = [...material.notes, ...memoryNote(material)].join(' ') || undefined;
  const tensile = material.tensileMinMpa;
  const strengthIsStated = part.strength !== undefined && quantityOf(part.strength, 'stress') === tensile;
  const yieldMpa = material.readings.map((one) => one.yieldMinMpa).filter((one) => one !== undefined);
  return {
    'part.class':
      material.class === undefined
        ? unknown(material.reason ?? 'Nothing stated can be read as a strength class.', at)
        : known(material.class, material.provenance, place, note),
    'part.family': computedOr(material.family, place, 'No grade is stated that tells the family.'),
    'part.tensile':
      tensile === undefined
        ? unknown('No tensile strength is stated or tabled.', place)
        : known(tensile, strengthIsStated ? 'stated' : 'table', strengthIsStated ? `${at}/strength` : place),
    'part.yield':
      yieldMpa.length === 0
        ? unknown('No yield strength is tabled.', place)
        : known(Math.max(...yieldMpa), 'table', place),
    'part.tensile_text': computedOr(
      tensileText(tensile, material.class),
      place,
      'Neither strength nor class is known.',
    ),
    'part.material_agrees': computed(material.contradictions.length === 0, place),
    'part.material_contradiction': computedOr(
      material.contradictions.map((one) => one.sentence).join(' ') || undefined,
      place,
      'Nothing disagrees.',
    ),
    'part.material_evidence': computed(materialEvidence(survey, part), `${at}/grade_from`),
    'part.thickness':
      pack?.completed.has('thickness') === true
        ? tabled(
            quantityOf(part.thickness, 'length') ?? 0,
            `The plan does not state it: ${pack.answer.saidBy}.`,
            `${at}/thickness`,
          )
        : statedOr(
            quantityOf(part.thickness, 'length'),
            `${at}/thickness`,
            'The sheet thickness is not stated.',
          ),
    'part.coating':
      part.coating !== undefined
        ? stated(part.coating, `${at}/coating`)
        : computedOr(material.coating, place, 'The coating is not stated.'),
    'part.laminated': computed(material.laminated === true, place),
    'part.zones': computed(
      (part.zones ?? []).length > 0 || material.severalStrengths === true,
      (part.zones ?? []).length > 0 ? `${at}/zones` : place,
    ),
  };
}

function memoryNote(material: PartSurvey['material']): readonly string[] {
  const [first] = material.readings;
  return first?.mark === 'memory'
    ? [`The table row for ${first.designation} (${first.standard}) is from memory.`]
    : [];
}

function tensileText(tensileMpa: number | undefined, strengthClass: string | undefined): string | undefined {
  if (tensileMpa === undefined) return strengthClass;
  const thousandPsi = Math.round((tensileMpa * psiPerMpa) / 1000);
  const strength = `${String(Math.round(tensileMpa))} MPa (about ${String(thousandPsi)},000 psi)`;
  return strengthClass === undefined ? strength : `${strengthClass}, ${strength}`;
}
