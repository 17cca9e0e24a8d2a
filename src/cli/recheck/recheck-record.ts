import type { FactSheet } from '../../facts/sheet.ts';
import { factSchemaVersion } from '../../generated/fact-names.ts';
import type { PlanSignOff } from '../../generated/plan-types.ts';
import type { FactDictionary } from '../../packs/fact-dictionary.ts';
import type { ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { shortDigest } from '../../report/judged-by.ts';
import type { PlanReport } from '../../report/plan-report.ts';
import { keyOf, movedFacts } from '../../recheck/moved-facts.ts';
import type { Computing } from '../../recheck/rechecked-plan.ts';
import type { EarlierPlan } from './earlier-report.ts';
import { version } from '../version.ts';

const nothing = { moved: [], gone: [], come: [], remarks: [] } as const;

/** What the sign-off says of the planish that the plan was checked with; undefined when it says nothing. */
export function signedComputing(signed: PlanSignOff | undefined): Computing | undefined {
  const { planish, facts } = signed?.digests ?? {};
  if (planish === undefined && facts === undefined) return undefined;
  return {
    by: 'sign-off',
    ...(planish === undefined ? {} : { planish }),
    ...(facts === undefined ? {} : { facts }),
    isOther: isOther(planish, facts),
    ...nothing,
  };
}

/**
 * An earlier report beside `again`, the same plan judged today by the versions of then. Only where the plan and the packs are the
 * same to the byte is a difference one of computing, and the recorded verdict the one of then.
 */
export function reportedComputing(
  { head, plan: earlier, isSameContent }: EarlierPlan,
  again: PlanReport,
  sheets: readonly FactSheet[],
  { layers }: ResolvedPacks,
  dictionary: FactDictionary,
): Computing {
  const about = {
    by: 'report' as const,
    planish: head.planish,
    facts: head.factSchema,
    isOther: isOther(head.planish, head.factSchema),
  };
  const remark = isSameContent ? otherRules(earlier, again) : 'The plan was changed after that report.';
  if (remark !== undefined) return { ...about, ...nothing, remarks: [remark] };
  const [then, now] = [earlier, again].map(({ findings }) => findings.map(({ finding }) => finding));
  const kinds = new Map(layers.flatMap(({ rules }) => rules.map(({ id, judges }) => [id, judges])));
  const keys = [then, now].map((list = []) => new Set(list.map(keyOf)));
  return {
    ...about,
    verdictThen: earlier.verdict,
    verdictAgain: again.verdict,
    moved: movedFacts(then ?? [], now ?? [], sheets, (rule) => kinds.get(rule), dictionary),
    gone: (then ?? []).filter((one) => keys[1]?.has(keyOf(one)) === false).map(({ rule }) => rule),
    come: (now ?? []).filter((one) => keys[0]?.has(keyOf(one)) === false).map(({ rule }) => rule),
    remarks: [],
  };
}

function otherRules(earlier: PlanReport, again: PlanReport): string | undefined {
  if (earlier.stage !== undefined && earlier.stage !== again.stage)
    return `That report judged at stage ${earlier.stage}, this one at ${again.stage ?? 'none'}.`;
  const other = (again.packs ?? []).filter(
    ({ pack, digest }) => !(earlier.packs ?? []).some((one) => one.pack === pack && one.digest === digest),
  );
  if (other.length === 0 && earlier.packs?.length === again.packs?.length) return undefined;
  const named = (plan: PlanReport): string =>
    (plan.packs ?? [])
      .map(({ pack, version: of, digest }) => `${pack} ${of} (${shortDigest(digest)})`)
      .join(', ') || 'no pack';
  return `That report was by other rules than these: ${named(earlier)}, here ${named(again)}.`;
}

function isOther(planish: string | undefined, facts: number | undefined): boolean {
  return (
    (planish !== undefined && planish !== version) || (facts !== undefined && facts !== factSchemaVersion)
  );
}
