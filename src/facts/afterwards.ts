import type { FactNames } from '../generated/fact-names.ts';
import type { Person, PlanDeviationsItem } from '../generated/plan-types.ts';
import { sameName } from '../vehicle/same-name.ts';
import { mismatchFact } from './deviation-mismatch.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, statedOr, unknown } from './make-fact.ts';
import { lastDatedStep } from './step/last-dated-step.ts';
import { dayOf } from './quantity-of.ts';
import { isNoQualification, saysNoHolds } from './refusals.ts';
import { ruleNoteFact } from './rule-note.ts';
import { ownWorkReleased } from './papers/by-who-did-it.ts';
import { otherReleaser } from './papers/other-releaser.ts';
import { qualifiedFor, unqualifiedWords } from './papers/qualified-for.ts';
import { samePerson } from './papers/same-person.ts';
import type { FactSheet } from './sheet.ts';
import { signedDigestFacts } from './papers/signed-digests.ts';
import type { OperationSurvey, Survey } from './survey.ts';

/** What was found so far, without its words: all that deviations and the sign-off depend on. */
export interface FoundSoFar {
  readonly rule: string;
  readonly severity: 'stop' | 'hold' | 'note';
  readonly part?: string;
  readonly operation?: string;
  readonly operationAt?: string;
  readonly fingerprint: string;
  /** A hold for what a stop hangs on. */
  readonly standsForStop?: boolean;
}

/** A deviation that is in force, and the one finding that it accepts. */
export interface PermitInForce {
  readonly rule: string;
  readonly part?: string;
  readonly fingerprint: string;
  readonly deviation: {
    readonly by: string;
    readonly role: string;
    readonly date: string;
    readonly reason: string;
    readonly expires: string;
  };
}

export interface SheetsAfterwards {
  readonly sheets: readonly FactSheet[];
  readonly permits: readonly PermitInForce[];
}

/**
 * The sheets of deviations and sign-off, from what was found. A permit is in force for exactly one finding, so that it never
 * pays for another; one that fits several is told and accepts none.
 */
export function deriveAfterwards(
  survey: Survey,
  planSheet: FactSheet,
  found: readonly FoundSoFar[],
): SheetsAfterwards {
  const deviations = (survey.plan.deviations ?? []).map((deviation, index) =>
    examine(survey, deviation, `/deviations/${String(index)}`, found),
  );
  const permits = deviations.flatMap(({ permit }) => (permit === undefined ? [] : [permit]));
  const accepted = new Set(permits.map(({ fingerprint }) => fingerprint));
  const sheets: FactSheet[] = deviations.map(({ at, facts }) => ({
    kind: 'deviation',
    at,
    facts,
    standsOn: [planSheet],
  }));
  sheets.push({
    kind: 'sign-off',
    at: '/sign_off',
    facts: signOffFacts(survey, found, accepted),
    standsOn: [planSheet],
  });
  return { sheets, permits };
}

interface ExaminedDeviation {
  readonly at: string;
  readonly facts: Readonly<Record<FactNames['deviation'], Fact>>;
  readonly permit?: PermitInForce;
}

function examine(
  survey: Survey,
  deviation: PlanDeviationsItem,
  at: string,
  found: readonly FoundSoFar[],
): ExaminedDeviation {
  const matching = found.filter((one) => isFor(survey, deviation, one));
  const [only] = matching;
  const elsewhere = matching.length > 0 ? undefined : standsOnOthers(deviation, found);
  const missing = missingOf(deviation);
  const expires = dayOf(deviation.expires);
  const date = dayOf(deviation.date);
  const { asOfDay } = survey.context;
  const author = survey.plan.job?.written_by?.name;
  const by = deviation.by?.name;
  const byAuthor = author === undefined || by === undefined ? undefined : samePerson(author, by);
  const inForce =
    matching.length === 1 &&
    only?.severity === 'hold' &&
    only.standsForStop !== true &&
    missing.length === 0 &&
    expires !== undefined &&
    expires >= asOfDay &&
    date !== undefined &&
    date <= asOfDay &&
    byAuthor !== true;
  const ruleNote =
    elsewhere === undefined
      ? ruleNoteFact(survey.context, deviation.rule, `${at}/rule`)
      : computed(elsewhere, `${at}/rule`);
  return {
    at,
    facts: {
      'deviation.rule': statedOr(deviation.rule, `${at}/rule`, 'No rule is named.'),
      'deviation.rule_note': ruleNote,
      'deviation.mismatch': mismatchFact(deviation, matching.length > 0 ? [] : found, !ruleNote.known, at),
      'deviation.matches': computed(matchWord(matching), at),
      'deviation.complete': computed(missing.length === 0, at),
      'deviation.missing': computedOr(missing.join(', ') || undefined, at, 'Nothing is missing.'),
      'deviation.expired': computedOr(
        expires === undefined ? undefined : expires < asOfDay,
        `${at}/expires`,
        'No last day is written.',
      ),
      'deviation.dated_ahead': computedOr(
        date === undefined ? undefined : date > asOfDay,
        `${at}/date`,
        'No date is written.',
      ),
      'deviation.by_author': computedOr(
        byAuthor,
        `${at}/by`,
        'Who wrote the plan, or who gave the permit, is not named.',
      ),
    },
    ...(inForce ? { permit: permitOf(deviation, only) } : {}),
  };
}

/** Where findings of the rule stand that the permit does not fit; nothing where there are none. */
function standsOnOthers({ rule }: PlanDeviationsItem, found: readonly FoundSoFar[]): string | undefined {
  const places = found
    .filter((one) => one.rule === rule)
    .map(({ part, operation }) => [part ?? 'the plan as a whole', operation].filter(Boolean).join(', '));
  return places.length === 0 ? undefined : `its findings stand on ${[...new Set(places)].join('; ')}`;
}

function matchWord(matching: readonly FoundSoFar[]): string {
  const [only] = matching;
  if (matching.length > 1) return 'several';
  if (only === undefined) return 'nothing';
  return only.standsForStop === true ? 'open question of a stop' : only.severity;
}

function permitOf(deviation: PlanDeviationsItem, finding: FoundSoFar): PermitInForce {
  return {
    rule: finding.rule,
    ...(finding.part === undefined ? {} : { part: finding.part }),
    fingerprint: finding.fingerprint,
    deviation: {
      by: deviation.by?.name ?? '',
      role: deviation.by?.role ?? '',
      date: deviation.date ?? '',
      reason: deviation.reason ?? '',
      expires: deviation.expires ?? '',
    },
  };
}

function isFor(survey: Survey, deviation: PlanDeviationsItem, found: FoundSoFar): boolean {
  if (deviation.rule !== found.rule) return false;
  // A finding of the whole plan stands on no part; a permit that names the one it was met on means it all the same.
  const isOfPlan = found.part === undefined && survey.partById.has(deviation.part ?? '');
  if (deviation.part !== found.part && !isOfPlan) return false;
  if (deviation.operation === undefined) return true;
  if (deviation.operation === found.operation) return true;
  const operation = survey.operations.find((one: OperationSurvey) => one.at === found.operationAt);
  return operation?.operation.id === deviation.operation;
}

function missingOf(deviation: PlanDeviationsItem): readonly string[] {
  return [
    ...(deviation.rule === undefined ? ['the rule'] : []),
    ...personMissing(deviation.by),
    ...(blank(deviation.reason) ? ['the reason'] : []),
    ...(deviation.date === undefined ? ['the date'] : []),
    ...(deviation.expires === undefined ? ['the last day'] : []),
  ];
}

function personMissing(person: Person | undefined): readonly string[] {
  return [...(blank(person?.name) ? ['the name'] : []), ...(blank(person?.role) ? ['the role'] : [])];
}

function blank(text: string | undefined): boolean {
  return text === undefined || text.trim() === '';
}

function signOffFacts(
  survey: Survey,
  found: readonly FoundSoFar[],
  accepted: ReadonlySet<string>,
): Readonly<Record<FactNames['sign-off'], Fact>> {
  const signOff = survey.plan.sign_off;
  const at = '/sign_off';
  const missing = [...personMissing(signOff?.by), ...(signOff?.date === undefined ? ['the date'] : [])];
  const author = survey.plan.job?.written_by?.name;
  const signer = signOff?.by?.name;
  const date = dayOf(signOff?.date);
  const last = lastDatedStep(survey);
  const noDate = 'No date of signature is written.';
  return {
    'sign-off.present': computed(signOff !== undefined, at),
    'sign-off.complete': computed(signOff !== undefined && missing.length === 0, at),
    'sign-off.missing': computedOr(missing.join(', ') || undefined, at, 'Nothing is missing.'),
    ...signedDigestFacts(survey),
    'sign-off.open_stops': computed(found.filter(({ severity }) => severity === 'stop').length, at),
    'sign-off.open_holds': computed(
      found.filter(({ severity, fingerprint }) => severity === 'hold' && !accepted.has(fingerprint)).length,
      at,
    ),
    'sign-off.holds_told': computedOr(
      accepted.size === 0 ? holdsTold(signOff?.open_holds) : undefined,
      `${at}/open_holds`,
      'The signature tells of no open hold, or permits accept what is open.',
    ),
    'sign-off.revision_gap': computedOr(
      revisionGap(survey.plan.job?.revision, signOff?.plan_revision),
      `${at}/plan_revision`,
      'The signature is for the plan as it stands.',
    ),
    'sign-off.by_author': computedOr(
      author === undefined || signer === undefined ? undefined : samePerson(author, signer),
      `${at}/by`,
      'Who wrote the plan, or who signed it, is not named.',
    ),
    'sign-off.qualified': computed(!isNoQualification(signOff?.by?.qualification), `${at}/by`),
    'sign-off.unqualified': computedOr(
      isNoQualification(signOff?.by?.qualification) ? undefined : unfitToRelease(signOff),
      `${at}/by`,
      'Who signs may be qualified for it, or states no qualification at all.',
    ),
    'sign-off.by_who_did_it': computedOr(
      ownWorkReleased(survey, signer),
      `${at}/by`,
      'Who signs did none of the structural work by the plan.',
    ),
    'sign-off.other_releaser': computedOr(
      ownWorkReleased(survey, signer) === undefined ? undefined : otherReleaser(survey, signer),
      `${at}/by`,
      'Who signs did none of the structural work, or the plan names nobody else who releases anything.',
    ),
    'sign-off.before_last_step':
      date === undefined
        ? unknown(noDate, `${at}/date`)
        : computed(last !== undefined && date < last, `${at}/date`),
    'sign-off.dated_ahead':
      date === undefined
        ? unknown(noDate, `${at}/date`)
        : computed(date > survey.context.asOfDay, `${at}/date`),
  };
}

/** Who signs with a paper for other work, one that has run out, or while still learning. A paper that does not say for what is let be. */
function unfitToRelease(signOff: Survey['plan']['sign_off']): string | undefined {
  const { by, date } = signOff ?? {};
  if (by === undefined) return undefined;
  if (/\b(?:apprentice|trainee|learner|intern|student)\b/i.test(by.role ?? ''))
    return `${by.name ?? 'someone'}, ${by.role ?? ''}`;
  const answer = qualifiedFor('body structure', by, date);
  return answer === 'yes' || answer === 'not told for what'
    ? undefined
    : unqualifiedWords('body structure', by, date);
}

/** What the signature says of open holds, unless it says that there are none. */
function holdsTold(text: string | undefined): string | undefined {
  return text === undefined || saysNoHolds(text) ? undefined : text;
}

/** Which revision was signed, against which one this is; nothing where neither is counted. */
function revisionGap(plan: string | undefined, signed: string | undefined): string | undefined {
  if (plan === undefined) {
    return signed === undefined ? undefined : `it is for revision ${signed}, and the plan bears none`;
  }
  if (signed === undefined) return `the plan is revision ${plan}, and the signature names none`;
  return sameName(plan, signed)
    ? undefined
    : `it is for revision ${signed}, and the plan is revision ${plan}`;
}
