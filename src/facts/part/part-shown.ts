import type { Joint, Near, Operation } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import type { LayeredPart } from './layer-order.ts';
import { operationNouns } from '../operation-noun.ts';
import type { SheetKind } from '../sheet.ts';
import type { CitationStanding, CitationSurvey, OperationSurvey, PartSurvey, Survey } from '../survey.ts';

type Facts = Readonly<Record<string, Fact>>;

/** One part as a person at the car looks for it. */
export interface PartShown {
  readonly at: string;
  readonly id?: string;
  readonly name: string;
  readonly kind?: string;
  readonly side?: string;
  /** 1 outside; undefined where the layers hide each other in a circle. */
  readonly layer?: number;
  /** Names of the parts that hide it, and of those that it hides. */
  readonly under: readonly string[];
  readonly over: readonly string[];
  readonly facts: Facts;
  readonly grade?: string;
  /** Where the material was read: document and place, and the kind of evidence. */
  readonly materialFrom?: string;
  readonly foundBy?: string;
  readonly damageExtent?: string;
  readonly condition?: string;
  readonly note?: string;
  /** Work on other parts that lists this one as lying beside it. */
  readonly besideWork: readonly string[];
  readonly operations: readonly OperationShown[];
}

export interface OperationShown {
  readonly at: string;
  readonly what: string;
  readonly step?: number;
  /** False where the plan says that it is not to be done. */
  readonly planned: boolean;
  readonly done?: string;
  readonly by?: string;
  readonly reason?: string;
  /** What else the plan states of it: name and value, in its words. */
  readonly stated: readonly (readonly [what: string, value: string])[];
  readonly citations: readonly CitationShown[];
  readonly near: readonly string[];
  readonly facts: Facts;
  readonly joints: readonly JointShown[];
}

export interface CitationShown {
  readonly text: string;
  readonly standing: CitationStanding;
}

/** A row of joints: the plan's words, and the facts that were judged. */
export interface JointShown {
  readonly joint: Joint;
  readonly facts: Facts;
}

/** The record of one part. `factsAt` finds the facts that were judged. */
export function partShown(
  survey: Survey,
  { part: one, layer, under, over }: LayeredPart,
  factsAt: (kind: SheetKind, at: string) => Facts,
): PartShown {
  const { part, at, name } = one;
  const { id, kind, side, damage, condition, note, grade } = part;
  const materialFrom = gradeFrom(survey, one);
  const [foundBy, extent] = [damage?.found_by, damage?.extent];
  return {
    at,
    name,
    ...(id === undefined ? {} : { id }),
    ...(kind === undefined ? {} : { kind }),
    ...(side === undefined ? {} : { side }),
    ...(layer === undefined ? {} : { layer }),
    under: under.map((other) => other.name),
    over: over.map((other) => other.name),
    facts: factsAt('part', at),
    ...(grade === undefined ? {} : { grade }),
    ...(materialFrom === undefined ? {} : { materialFrom }),
    ...(foundBy === undefined ? {} : { foundBy }),
    ...(extent === undefined ? {} : { damageExtent: extent }),
    ...(condition === undefined ? {} : { condition }),
    ...(note === undefined ? {} : { note }),
    besideWork: besideWork(survey, one),
    operations: one.operations.map((operation) => operationShown(survey, operation, factsAt)),
  };
}

function gradeFrom(survey: Survey, { part }: PartSurvey): string | undefined {
  const { reference: id, at, by } = part.grade_from ?? {};
  const document =
    id === undefined ? undefined : (survey.referenceById.get(id)?.name ?? `${id} (not listed)`);
  const words = [document, at, by].filter((word) => word !== undefined);
  return words.length === 0 ? undefined : words.join(', ');
}

function operationShown(
  survey: Survey,
  { operation, at, citations, joints }: OperationSurvey,
  factsAt: (kind: SheetKind, at: string) => Facts,
): OperationShown {
  const { do: word, step, done, by, reason, planned, near } = operation;
  return {
    at,
    what: word === undefined ? 'work of which the plan does not say what' : operationNouns[word],
    ...(step === undefined ? {} : { step }),
    planned: planned !== false,
    ...(done === undefined ? {} : { done }),
    ...(by?.name === undefined ? {} : { by: by.name }),
    ...(reason === undefined ? {} : { reason }),
    stated: statedOf(operation),
    citations: citations.map(citationShown),
    near: (near ?? []).map((one) => nearWords(survey, one)),
    facts: factsAt('operation', at),
    joints: joints.map((one) => ({ joint: one.joint, facts: factsAt('joint', one.at) })),
  };
}

function besideWork(survey: Survey, { part: { id } }: PartSurvey): readonly string[] {
  if (id === undefined) return [];
  return survey.operations.flatMap(({ operation: { do: word, near }, part }) =>
    (near ?? []).flatMap((one) => {
      if (one.part !== id) return [];
      const work = `${word === undefined ? 'work' : operationNouns[word]} on ${part.name}`;
      return [[work, one.distance, one.treatment].filter((each) => each !== undefined).join(', ')];
    }),
  );
}

function citationShown({ reference, id, place, standing }: CitationSurvey): CitationShown {
  const document = reference?.name ?? id ?? 'no document';
  return { text: place === undefined ? document : `${document}, ${place}`, standing };
}

/** Keys of an operation that a person at the car works by, in the order in which they are read. */
function statedOf(operation: Operation): OperationShown['stated'] {
  const {
    extent,
    at,
    zone,
    source,
    temperature,
    hold,
    times,
    measured_by: means,
    cooling,
    method,
  } = operation;
  const entries: readonly (readonly [string, string | number | undefined])[] = [
    ['extent', extent],
    ['place', at],
    ['strength zone', zone],
    ['cut with', operation.cut_with],
    ['method', method],
    ['heat source', source],
    ['temperature', temperature],
    ['held for', hold],
    ['heatings', times],
    ['measured by', means?.means],
    ['cooling', cooling],
    ['starts below', operation.starts_below],
    ['nothing sensitive within', operation.clear_within],
    ['earth clamp', operation.earth_clamp],
    ['control units', operation.control_units],
    ['fire watch', operation.fire_watch],
    ['material', operation.material],
    ['back on at step', operation.refit_step],
    ['planned', typeof operation.planned === 'string' ? operation.planned : undefined],
    ['note', operation.note],
  ];
  return entries.flatMap(([what, value]) => (value === undefined ? [] : [[what, String(value)] as const]));
}

function nearWords(survey: Survey, { name, part, item, distance, path, treatment }: Near): string {
  const ofPart = part === undefined ? undefined : (survey.partById.get(part)?.name ?? part);
  const called = name ?? ofPart ?? item ?? 'something without a name';
  return [called, treatment, distance, path].filter((word) => word !== undefined).join(', ');
}
