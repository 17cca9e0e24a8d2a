import { damageKinds } from '../part/part-damage-facts.ts';
import { conditionKept, isOfTheCut } from '../part/condition-kept.ts';
import type { Fact } from '../fact.ts';
import type { NamedOperation } from '../context.ts';
import { isThermalCut } from '../heat/thermal-cut.ts';
import type { ApplicableStatement } from './maker-statements.ts';
import {
  citesStatement,
  isForbidden,
  isNamed,
  nameOperation,
  packForVehicle,
  statementsFor,
} from './maker-statements.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { whereItSays } from './maker-applies.ts';
import { successorOf } from './superseded.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

type ProvisionFact =
  | 'provision.says'
  | 'provision.permits'
  | 'provision.by'
  | 'provision.open'
  | 'provision.open_text'
  | 'provision.pending'
  | 'provision.forbids'
  | 'provision.forbids_text'
  | 'provision.to_type_in';

type OpenPoint = 'superseded' | 'not cited' | 'revision' | 'page' | 'place' | 'conditions' | 'not kept';

/** A may or shall for the operation, and what keeps it from counting. */
interface Permission extends ApplicableStatement {
  readonly shall: boolean;
  readonly open: readonly OpenPoint[];
  /** Conditions that the plan says are met and its own joints do not keep. */
  readonly notKept: readonly string[];
}

/** What the maker's document, as typed into the vehicle packs, says of one operation. */
export function provisionFacts(survey: Survey, one: OperationSurvey): Readonly<Record<ProvisionFact, Fact>> {
  const { at } = one;
  const permissions = permissionsFor(survey, one);
  const met = permissions.find(({ open }) => open.length === 0);
  const prohibition = prohibitionFor(survey, one, met);
  const counts = prohibition === undefined ? met : undefined;
  const open = met === undefined && permissions.length > 0 ? leastOpen(permissions) : undefined;
  return {
    'provision.says': says(survey, prohibition, permissions, at),
    'provision.permits': computed(counts !== undefined, at),
    'provision.by': computedOr(
      counts === undefined ? undefined : whereItSays(counts.statement, counts.pack),
      at,
      'No provision that the plan cites permits it.',
    ),
    'provision.open': open === undefined ? unknown('No permission is open.', at) : computed(open.open, at),
    'provision.open_text': computedOr(
      open === undefined ? undefined : openText(open),
      at,
      'No permission is open.',
    ),
    'provision.pending': computedOr(
      counts === undefined ? undefined : pendingText(counts, one),
      at,
      'No condition of a permission is still to be kept.',
    ),
    'provision.forbids': computed(prohibition !== undefined, at),
    'provision.forbids_text': computedOr(
      prohibition === undefined ? undefined : whereItSays(prohibition.statement, prohibition.pack),
      at,
      'No provision forbids it.',
    ),
    'provision.to_type_in': isThermalCut(one.operation)
      ? unknown('No statement of a pack lets a part be cut by a flame or plasma.', at)
      : isPulledThoughFolded(one)
        ? unknown(
            'No statement of a pack lets a folded or torn part that carries crash load be straightened.',
            at,
          )
        : computed(toTypeIn(survey, one), at),
  };
}

/** What the rule on folded, torn and burnt structure stops, whatever a page permits: to type in a permission would help nothing. */
const pastStraightening: ReadonlySet<string> = new Set([
  ...['kink', 'tear', 'crack', 'crease', 'burn', 'rusted through'],
]);

function isPulledThoughFolded({ straightens, part: { structural, part } }: OperationSurvey): boolean {
  return (
    straightens === true &&
    structural === true &&
    damageKinds(part).some((kind) => pastStraightening.has(kind))
  );
}

function says(
  survey: Survey,
  prohibition: ApplicableStatement | undefined,
  permissions: readonly Permission[],
  at: string,
): Fact {
  if (prohibition !== undefined) return computed('shall not', at);
  const [first] = permissions;
  if (first !== undefined) return computed(first.shall ? 'shall' : 'may', at);
  return packForVehicle(survey) === true
    ? computed('silent', at)
    : unknown('No rule pack for this vehicle and year is loaded.', at);
}

function permissionsFor(survey: Survey, one: OperationSurvey): readonly Permission[] {
  const found: Permission[] = [];
  for (const applicable of statementsFor(survey, one.part, false)) {
    const { statement } = applicable;
    const lists = [
      [statement.shall, true],
      [statement.may, false],
    ] as const;
    for (const [named, shall] of lists) {
      for (const operation of named) {
        const fits = isNamed(operation, one);
        if (fits === false || !letsHeat(named, one)) continue;
        const notKept = statement.conditions.filter(
          (condition) => isSaidToBeMet(one, condition) && conditionKept(condition, one) === 'not kept',
        );
        found.push({
          ...applicable,
          shall,
          notKept,
          open: [
            ...(successorOf(survey, statement) === undefined ? [] : (['superseded'] as const)),
            ...openPoints(applicable, one, fits === true, notKept),
          ],
        });
      }
    }
  }
  return found;
}

/**
 * That a part may be replaced, cut or straightened lets nobody heat it for that: of work that heats, heat is named as well. What is
 * cut by a flame or plasma no statement of a pack names.
 */
function letsHeat(named: readonly NamedOperation[], one: OperationSurvey): boolean {
  if (isThermalCut(one.operation)) return false;
  return one.heats === false || named.some((other) => other.do === 'heat');
}

function openPoints(
  { statement }: ApplicableStatement,
  one: OperationSurvey,
  placeFits: boolean,
  notKept: readonly string[],
): readonly OpenPoint[] {
  const cited = one.citations.map((citation) => citesStatement(citation, statement));
  return [
    ...citationGap(cited),
    ...(placeFits && jointsLieThere(one) ? [] : (['place'] as const)),
    ...(statement.conditions.every((condition) => isSaidToBeMet(one, condition))
      ? []
      : (['conditions'] as const)),
    ...(notKept.length === 0 ? [] : (['not kept'] as const)),
  ];
}

function isSaidToBeMet({ operation }: OperationSurvey, condition: string): boolean {
  return (operation.conditions_met ?? []).some(
    (said) => said.trim().toLowerCase() === condition.trim().toLowerCase(),
  );
}

/** A joint of the cut that bears another mark than the operation is another cut. "B, upper" is still B. */
function jointsLieThere({ operation, joints }: OperationSurvey): boolean {
  if (operation.at === undefined) return true;
  const mark = marksOf(operation.at);
  return joints.every(
    ({ joint }) =>
      joint.place === undefined ||
      !isOfTheCut(joint) ||
      mark.every((word) => marksOf(joint.place ?? '').includes(word)),
  );
}

function marksOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}

function citationGap(cited: readonly ReturnType<typeof citesStatement>[]): readonly OpenPoint[] {
  if (cited.includes('yes')) return [];
  if (cited.includes('other page')) return ['page'];
  return cited.includes('other revision') ? ['revision'] : ['not cited'];
}

/**
 * A prohibition of the part. One that names the operation in general yields to a permission that the plan meets, unless it
 * is the later word: a newer page forbids what an older one drew.
 */
function prohibitionFor(
  survey: Survey,
  one: OperationSurvey,
  met: Permission | undefined,
): ApplicableStatement | undefined {
  return statementsFor(survey, one.part, true).find(({ statement }) => {
    if (!statement.shallNot.some((named) => isForbidden(named, one))) return false;
    if (met === undefined) return true;
    const sameText =
      statement.document === met.statement.document && statement.revision === met.statement.revision;
    const olderText =
      statement.published !== undefined &&
      met.statement.published !== undefined &&
      statement.published < met.statement.published;
    return !sameText && !olderText;
  });
}

function leastOpen(permissions: readonly Permission[]): Permission | undefined {
  return permissions.toSorted((a, b) => a.open.length - b.open.length)[0];
}

/** Conditions that the plan says are met, and that the work has yet to keep. */
function pendingText({ statement }: Permission, one: OperationSurvey): string | undefined {
  return (
    statement.conditions.filter((condition) => conditionKept(condition, one) === 'not yet').join('; ') ||
    undefined
  );
}

function openText({ statement, pack, open, notKept }: Permission): string {
  const words: Readonly<Record<OpenPoint, string>> = {
    superseded: 'another document took the place of this one',
    'not cited': 'this plan does not cite it with its place',
    revision: `this plan cites another revision than ${statement.revision ?? 'the one in the pack'}`,
    page: `this plan cites another place of it than ${statement.page ?? 'the one in the pack'}`,
    'not kept': `said to be met, but not by the joints as the plan states them: ${notKept.join('; ')}`,
    place: `the place of the operation, or of a joint of it, is not one that it names (${[...statement.may, ...statement.shall].map(nameOperation).join(', ')})`,
    conditions: `not every condition is stated as met (${statement.conditions.join('; ')})`,
  };
  return `${whereItSays(statement, pack)}: ${open.map((point) => words[point]).join('; ')}`;
}

/** The entry for a vehicle pack, as one line of YAML, filled from the plan as far as it goes. */
function toTypeIn(survey: Survey, { operation, part, restsOn, heats }: OperationSurvey): string {
  const cited = restsOn?.standing === 'covers' ? restsOn : undefined;
  const reference = cited?.reference?.reference;
  const { do: word, extent, at } = operation;
  const name = nameOperation({
    do: word ?? '…',
    ...(extent === undefined ? {} : { extent }),
    ...(at === undefined ? {} : { at }),
  });
  const entries = [
    ['part', part.part.kind ?? '…'],
    ['years', String(survey.plan.vehicle.model_year ?? '…')],
    ['document', reference?.document ?? '…'],
    ['revision', reference?.revision ?? '…'],
    ['page', cited?.place ?? '…'],
  ] as const;
  const start = entries.map(([key, value]) => `${key}: ${JSON.stringify(value)}`).join(', ');
  const may = heats === true && word !== 'heat' ? [name, 'heat'] : [name];
  return `{${start}, may: [${may.map((one) => JSON.stringify(one)).join(', ')}]}`;
}
