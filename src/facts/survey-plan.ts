import type { Joint, Operation, Part, Plan } from '../generated/plan-types.ts';
import type { DerivationContext } from './context.ts';
import type { SettledMaterial } from '../steel/settling/settle-material.ts';
import { heatOfSibling } from './heat/heat-of-sibling.ts';
import { calledKind } from './part/called-kind.ts';
import { carriesCrashLoad, carriesCrashLoadByStrength, usuallyCosmetic } from './part/part-kinds.ts';
import { compareMaterials, completePart, packPartOf, strongerMaterial } from './part/pack-part.ts';
import { settlePartMaterial } from './part/part-material.ts';
import { listOf, quantityOf } from './quantity-of.ts';
import type { OperationSurvey, PartSurvey, ReferenceSurvey, Survey } from './survey.ts';
import { operationTraits } from './survey-operation.ts';
import { bestCitation, surveyCitations, surveyReferences } from './papers/survey-references.ts';
import type { TriState } from './tri-state.ts';
import { otherSides, twinParts } from './part/twin-parts.ts';

/** Looks everything in a plan up once: ids, citations, materials, what each operation does. */
export function surveyPlan(
  plan: Plan,
  context: DerivationContext,
  unread: ReadonlySet<string> = new Set(),
): Survey {
  const references = surveyReferences(plan);
  const referenceById = firstById(references, (survey) => survey.reference.id);
  const thicknessMm = thicknessById(plan);
  const parts = plan.parts.map((part, index) =>
    surveyPart(plan, context, part, `/parts/${String(index)}`, referenceById, thicknessMm),
  );
  const twins = twinParts(parts);
  return {
    plan,
    context,
    unread,
    references,
    referenceById,
    parts,
    partById: firstById(parts, (survey) => survey.part.id),
    gradesFromPacks: new Set(
      parts.filter(({ pack }) => pack?.completed.has('material') === true).map(({ part }) => part),
    ),
    twins,
    otherSide: otherSides(twins),
    namedBy: byNamedId(parts),
    operations: parts.flatMap((part) => part.operations),
  };
}

function surveyPart(
  plan: Plan,
  context: DerivationContext,
  written: Part,
  at: string,
  referenceById: ReadonlyMap<string, ReferenceSurvey>,
  thicknessMm: Thicknesses,
): PartSurvey {
  const operations: OperationSurvey[] = [];
  const called = calledKind(written);
  const stated: Part = called === undefined ? written : { ...written, kind: called };
  const { part, material, pack } = withPack(plan, context, stated);
  const survey: PartSurvey = {
    part,
    at,
    name: part.name ?? part.id ?? part.kind ?? 'a part without a name',
    material,
    ...(called === undefined ? {} : { called }),
    structural: structural(part, material.class),
    ...(pack === undefined ? {} : { pack }),
    operations,
    names: namedIds(part),
  };
  part.operations?.forEach((operation, index) => {
    const place = `${at}/operations/${String(index)}`;
    operations.push(surveyOperation(operation, place, survey, referenceById, thicknessMm));
  });
  for (const [index, operation] of operations.entries()) {
    const heatOf = heatOfSibling(operation, operations);
    if (heatOf !== undefined) operations[index] = { ...operation, heatOf };
  }
  return survey;
}

/** The part as the plan states it, completed from the vehicle packs; of two materials the stronger counts. */
function withPack(
  plan: Plan,
  context: DerivationContext,
  stated: Part,
): Pick<PartSurvey, 'part' | 'material' | 'pack'> {
  const answer = packPartOf(plan.vehicle, context.makers, stated);
  if (answer === undefined) return { part: stated, material: settlePartMaterial(stated) };
  const { part, completed } = completePart(stated, answer);
  const own = settlePartMaterial(part);
  const how = compareMaterials(part, own, answer.material, completed);
  return {
    // In one piece as soon as one of the two says so.
    part: answer.entry.onePiece === true ? { ...part, one_piece: true } : part,
    material: strongerMaterial(own, answer, how),
    pack: {
      answer,
      completed,
      how,
      ...(stated.one_piece === undefined ? {} : { onePieceStated: stated.one_piece }),
    },
  };
}

function surveyOperation(
  operation: Operation,
  at: string,
  part: PartSurvey,
  referenceById: ReadonlyMap<string, ReferenceSurvey>,
  thicknessMm: Thicknesses,
): OperationSurvey {
  const isList = Array.isArray(operation.cite);
  const citations = surveyCitations(
    listOf(operation.cite),
    (index) => (isList ? `${at}/cite/${String(index)}` : `${at}/cite`),
    referenceById,
  );
  const restsOn = bestCitation(citations);
  return {
    operation,
    at,
    part,
    citations,
    ...(restsOn === undefined ? {} : { restsOn }),
    joints: (operation.joints ?? []).map((joint, index) => {
      const thinnest = thinnestMm(joint, part.part, thicknessMm);
      return {
        joint,
        at: `${at}/joints/${String(index)}`,
        ...(thinnest === undefined ? {} : { thinnestMm: thinnest }),
      };
    }),
    ...operationTraits(operation, part.part),
  };
}

/** Of a listed part, mm. */
type Thicknesses = (id: string | undefined) => number | undefined;

function thicknessById({ parts }: Plan): Thicknesses {
  return (id) => quantityOf(parts.find((part) => part.id === id)?.thickness, 'length');
}

/**
 * The thinnest sheet of a joint: heat runs furthest in it. Edges that meet are of one sheet; for every other joint the plan must
 * name what it is joined to.
 */
function thinnestMm(joint: Joint, part: Part, thicknessMm: Thicknesses): number | undefined {
  const ids = new Set([...(joint.sheets ?? []), ...listOf(joint.to)]);
  if (part.id !== undefined) ids.delete(part.id);
  const isOneSheet = joint.form === 'open butt' || joint.form === 'butt with insert';
  if (ids.size === 0 && !isOneSheet && (joint.sheets ?? []).length === 0) return undefined;
  let thinnest = quantityOf(part.thickness, 'length');
  for (const id of ids) {
    const other = thicknessMm(id);
    thinnest = thinnest === undefined || other === undefined ? undefined : Math.min(thinnest, other);
  }
  return thinnest;
}

function structural(part: Part, strengthClass: SettledMaterial['class']): TriState {
  if (carriesCrashLoadByStrength(strengthClass)) return true;
  if (carriesCrashLoad(part.kind) || part.structural === true) return true;
  if (part.structural === false || usuallyCosmetic(part.kind)) return false;
  return undefined;
}

function namedIds(part: Part): ReadonlySet<string> {
  const ids = new Set([...listOf(part.under), ...listOf(part.over), ...(part.joined_to ?? [])]);
  for (const { joints } of part.operations ?? []) {
    for (const { sheets, to } of joints ?? []) {
      for (const id of sheets ?? []) ids.add(id);
      if (to !== undefined) ids.add(to);
    }
  }
  return ids;
}

/** Turned round once, since asking every part about every other is what a long plan would spend its time on. */
function byNamedId(parts: readonly PartSurvey[]): ReadonlyMap<string, readonly PartSurvey[]> {
  const byId = new Map<string, PartSurvey[]>();
  for (const part of parts) {
    for (const id of part.names) {
      const namers = byId.get(id);
      if (namers === undefined) byId.set(id, [part]);
      else namers.push(part);
    }
  }
  return byId;
}

/** The first bearer of an id counts; a second one is a fault of the plan's form. */
function firstById<T>(surveys: readonly T[], id: (survey: T) => string | undefined): ReadonlyMap<string, T> {
  const byId = new Map<string, T>();
  for (const survey of surveys) {
    const own = id(survey);
    if (own !== undefined && !byId.has(own)) byId.set(own, survey);
  }
  return byId;
}
