import type { FactNames } from '../../generated/fact-names.ts';
import { sameName } from '../../vehicle/same-name.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { saysRefused } from '../../plan/names-nothing.ts';
import { saidInClause } from '../../plan/said-in-clause.ts';
import type { PartSurvey, Survey } from '../survey.ts';

type EarlierFact = Extract<
  FactNames['part'],
  `part.${'repaired_before' | 'earlier_repair' | 'earlier_repair_text' | 'earlier_repair_reached'}`
>;

export interface EarlierRepair {
  readonly state: 'sound' | 'not sound' | 'comes out' | 'not told';
  readonly text: string;
  readonly at: string;
}

const all = '/vehicle/earlier_repairs';

/** What was done to a part before this job, and how that was found. */
export function earlierRepairFacts(survey: Survey, one: PartSurvey): Readonly<Record<EarlierFact, Fact>> {
  const repair = earlierRepair(survey, one);
  const at = repair?.at ?? all;
  return {
    'part.repaired_before': computed(wasRepaired(survey, one), all),
    'part.earlier_repair': computed(repair?.state ?? 'none', at),
    'part.earlier_repair_reached': computedOr(
      repair === undefined ? undefined : reachedBy(survey, one),
      at,
      'Nothing of this job rests on it, or no earlier repair of it is known.',
    ),
    'part.earlier_repair_text': computedOr(repair?.text, at, 'No earlier repair of it is known.'),
  };
}

/** What was joined in of a member and not as a whole: "rail end replaced", "rail sectioned". */
const pieceJoined =
  /\b(?:end|tip|piece|half|portion|section) (?:\S+ ){0,4}(?:replaced|renewed|welded|joined)\b|\b(?:sectioned|butt[- ]welded|(?:replaced|renewed) (?:in part|partly|part-way))\b/i;

/** By its id or name, by its name in a sentence, or by its kind where a piece of it was joined in; "none known" names no part. */
export function wasRepaired({ plan }: Survey, one: PartSurvey): boolean {
  const { part, name } = one;
  const repairs = plan.vehicle.earlier_repairs ?? [];
  if (typeof repairs === 'string') {
    if (repairs.toLowerCase().includes(name.toLowerCase())) return true;
    const clauses = repairs
      .split(/[,;.]\s/u)
      .filter((clause) => saidInClause(clause, pieceJoined) !== undefined);
    return clauses.some((clause) => saysOf(clause, one));
  }
  return repairs.some(
    (repair) =>
      repair.part !== undefined &&
      (sameName(repair.part, name) || (part.id !== undefined && sameName(repair.part, part.id))),
  );
}

/** The earlier repair that touched a part, or may have: a sentence seldom writes the name as the plan does. */
export function earlierRepair(survey: Survey, one: PartSurvey): EarlierRepair | undefined {
  const repairs = survey.plan.vehicle.earlier_repairs ?? [];
  if (typeof repairs === 'string') {
    return saysOf(repairs, one) ? { state: 'not told', text: repairs, at: all } : undefined;
  }
  const index = repairs.findIndex(
    ({ part, what }) => (part !== undefined && part === one.part.id) || saysOf([part, what].join(' '), one),
  );
  const repair = repairs[index];
  if (repair === undefined) return undefined;
  const { state, found_by: foundBy, part, what, when } = repair;
  const isShown = state !== 'sound' || (foundBy !== undefined && !saysRefused(foundBy));
  return {
    state: state === undefined || state === 'not looked at' || !isShown ? 'not told' : state,
    text: [part, what, when].filter((word) => word !== undefined).join(', '),
    at: `${all}/${String(index)}`,
  };
}

const sides = /(?<![\p{L}-])(?:left|right|both|sides)(?![\p{L}-])/gu;

/** Whether a sentence names the part, or its kind, and not only the other side. */
function saysOf(text: string, { part, name }: PartSurvey): boolean {
  const words = text.toLowerCase();
  const bareName = name
    .toLowerCase()
    .replace(/[,(]?\s*\b(?:left|right)\b\)?/gu, '')
    .trim();
  const called = [bareName, ...(part.kind === undefined || part.kind === 'other' ? [] : [part.kind])];
  if (!called.some((one) => one.length > 2 && words.includes(one))) return false;
  const named = new Set(words.match(sides) ?? []);
  const isOneSide = part.side === 'left' || part.side === 'right';
  return named.size !== 1 || !isOneSide || named.has(part.side) || named.has('both') || named.has('sides');
}

/** What of the job rests on a part that is not replaced whole. What cuts or pulls it again is told of the operation. */
function reachedBy({ operations }: Survey, one: PartSurvey): string | undefined {
  const isNew = one.operations.some(
    ({ operation: { do: word, extent } }) => word === 'replace' && extent === 'whole',
  );
  if (isNew) return undefined;
  const { id } = one.part;
  const joined = operations.find(
    ({ part, joints }) =>
      part !== one &&
      id !== undefined &&
      joints.some(
        ({ joint: { to, sheets, method } }) => method !== 'bolt' && (to === id || sheets?.includes(id)),
      ),
  );
  if (joined !== undefined) return `${joined.part.name} is joined to it`;
  const worked = one.operations.find(
    ({ works, cutsPartWay, straightens }) => works === true && cutsPartWay !== true && straightens !== true,
  );
  return worked === undefined ? undefined : 'it is worked on';
}
