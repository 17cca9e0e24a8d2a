import type { UnknownFact } from '../facts/fact.ts';
import type { FactSheet } from '../facts/sheet.ts';
import { factEntry } from '../packs/fact-dictionary.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { sourceSentence } from '../packs/source-sentence.ts';
import { comparePointers } from './compare-pointers.ts';
import type { CompiledRule } from './compiled-rule.ts';
import { sheetIdentity, whereabouts } from './draft-finding.ts';
import type { DraftFinding } from './draft-finding.ts';
import { asSentence } from './fact-title.ts';
import type { PlanOrder } from './plan-order.ts';
import { askersOf, notJudgedWithout } from './not-judged-without.ts';

/** A stop or hold rule met a fact that is unknown. */
export interface Question {
  readonly rule: CompiledRule;
  /** The sheet that holds the fact: the one judged, or one that it stands on. */
  readonly owner: FactSheet;
  readonly name: string;
  readonly fact: UnknownFact;
}

/**
 * The holds for what is unknown, one for each missing thing. Two questions are about the same thing when the same fact of
 * the same sheet is asked for the same reason, or when two facts name the same plan entry (`at`) and the same reason:
 * a missing thickness makes a peak temperature unknown too. Questions that `answered` speaks for (a rule that finds
 * the very absence) are dropped. The result does not depend on the order of questions.
 */
export function unknownHolds(
  questions: readonly Question[],
  answered: readonly Omit<Question, 'rule'>[],
  order: PlanOrder,
  dictionary: FactDictionary,
): readonly DraftFinding[] {
  const spokenFor = new Set(answered.map(thingOf));
  const groups = new Map<string, Question[]>();
  for (const question of questions) {
    const thing = thingOf(question);
    if (spokenFor.has(thing)) continue;
    const group = groups.get(thing);
    if (group === undefined) groups.set(thing, [question]);
    else group.push(question);
  }
  return [...groups.values()].map((group) => holdFor(group, order, dictionary));
}

/** Of the findings that speak for questions, those that speak for one of a stop. */
export function speakingForStops<Speaker>(
  questions: readonly Question[],
  answered: readonly (Omit<Question, 'rule'> & { readonly by: Speaker })[],
): ReadonlySet<Speaker> {
  const ofStops = new Set(questions.filter(({ rule }) => rule.rule.severity === 'stop').map(thingOf));
  return new Set(answered.filter((one) => ofStops.has(thingOf(one))).map(({ by }) => by));
}

function thingOf({ owner, name, fact }: Omit<Question, 'rule'>): string {
  return fact.at === undefined
    ? JSON.stringify([owner.kind, owner.at, fact.reason, name])
    : JSON.stringify([fact.at, fact.reason]);
}

function holdFor(group: readonly Question[], order: PlanOrder, dictionary: FactDictionary): DraftFinding {
  const askers = askersOf(group);
  const byPlace = [...group].sort(
    (a, b) =>
      // A part that is asked is named before the plan that hangs on it.
      Number(a.owner.part === undefined) - Number(b.owner.part === undefined) ||
      comparePointers(a.owner.at, b.owner.at) ||
      compareTexts(a.owner.kind, b.owner.kind) ||
      compareTexts(a.name, b.name),
  );
  const [lead] = askers;
  const [first] = byPlace;
  if (lead === undefined || first === undefined) throw new Error('a hold without a question');
  const names = [...new Set(byPlace.map((question) => question.name))];
  const where = whereabouts(first.owner);
  const named = where.partName ?? where.part;
  return {
    rule: lead.rule.id,
    pack: lead.pack,
    severity: 'hold',
    ...where,
    pointer: first.fact.at ?? first.owner.at,
    // The reason says what is missing; the name of the fact would only say it again in stiffer words.
    message: `${named === undefined || first.fact.reason.startsWith(`Whether ${named} `) ? '' : `${named}: `}${asSentence(first.fact.reason)}`,
    instead: `Find it out and state it in the plan${keysToState(dictionary, names, first.fact)}, with where it was read.`,
    why: `Silence is not permission. ${notJudgedWithout(askers)}`,
    source: sourceSentence(lead.rule.source),
    facts: names.map((name) => ({ name, from: 'unknown', note: first.fact.reason })),
    assumptions: [],
    asksUnknown: true,
    standsForStop: lead.rule.severity === 'stop',
    // Not the rules that ask: another one asking next year is no new finding.
    identity: ['unknown', ...names, ...sheetIdentity(first.owner, order)],
  };
}

/** By which keys it is stated; the one that its place ends in tells it best. A reason that names a key needs no other. */
function keysToState(
  dictionary: FactDictionary,
  names: readonly string[],
  { at, reason }: UnknownFact,
): string {
  if (reason.includes('`')) return '';
  const lists = names
    .map((name) => factEntry(dictionary, name)?.keys ?? [])
    .filter((keys) => keys.length > 0);
  const last = at?.split('/').at(-1);
  const [shortest = []] = lists.toSorted((a, b) => a.length - b.length);
  const keys = lists
    .flat()
    .filter((key) => key === last)
    .slice(0, 1);
  const told = (keys.length > 0 ? keys : shortest).map((key) => `\`${key}\``);
  return told.length === 0 ? '' : ` (${told.join(', ')})`;
}

function compareTexts(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
