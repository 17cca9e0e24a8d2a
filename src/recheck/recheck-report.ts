import type { UsedPack } from '../report/plan-report.ts';
import type { Severity } from '../judge/finding.ts';
import type { Change, Computing, RecheckedPlan } from './rechecked-plan.ts';

/** What is true of the whole recheck. */
export interface RecheckHead {
  readonly planish: string;
  readonly factSchema: number;
  /** The packs that the command line names, in the versions that were chosen; empty where each plan's own count. */
  readonly from: readonly UsedPack[];
  readonly to: readonly UsedPack[];
  /** ISO 8601; absent when each plan was judged as of its own day. */
  readonly asOf?: string;
  readonly today: string;
  /** The earlier report that was read. */
  readonly earlier?: string;
}

/** What a pack says of a rule, for who asks why a plan comes out otherwise. */
export interface RuleHistory {
  readonly since: string;
  readonly until?: string;
  readonly replacedBy?: string;
  /** The rules whose place it took. */
  readonly replaces: readonly string[];
}

/** One rule, and the plans that it changes. */
export interface RuleGroup {
  readonly rule: string;
  readonly pack: string;
  readonly severity: Severity;
  readonly why: string;
  readonly instead: string;
  readonly source: string;
  readonly history?: RuleHistory;
  readonly plans: readonly RecheckedPlan[];
}

export interface RecheckReport extends RecheckHead {
  readonly plans: number;
  readonly counts: Readonly<Record<Change, number>>;
  /** All plans but those that come out the same by what they are recorded with, in the order of the files. */
  readonly changed: readonly RecheckedPlan[];
  /** Plans whose record comes from another planish or fact schema, or in which a fact moved. */
  readonly computedDifferently: readonly (RecheckedPlan & { readonly computing: Computing })[];
  /** Files of the earlier report that were not among the plans. */
  readonly left: readonly string[];
  readonly historyOf: (rule: string) => RuleHistory | undefined;
}

export interface RecheckCollector {
  readonly add: (plan: RecheckedPlan) => void;
  readonly report: (
    head: RecheckHead,
    left: readonly string[],
    historyOf: RecheckReport['historyOf'],
  ) => RecheckReport;
  /** 0 nothing worse, 1 something is, 2 something could not be judged, or there was nothing. */
  readonly status: () => 0 | 1 | 2;
}

/** Gathers plan by plan; only what changed is kept. */
export function collectRecheck(): RecheckCollector {
  const counts: Record<Change, number> = {
    ...{ 'no longer passes': 0, worse: 0, 'passes now': 0, better: 0 },
    ...{ same: 0, 'not judged': 0 },
  };
  const changed: RecheckedPlan[] = [];
  const computed: RecheckReport['computedDifferently'][number][] = [];
  let plans = 0;
  return {
    add: (plan) => {
      plans += 1;
      counts[plan.change] += 1;
      if (plan.change !== 'same') changed.push(plan);
      const { computing } = plan;
      if (computing !== undefined && differs(computing)) computed.push({ ...plan, computing });
    },
    report: (head, left, historyOf) => ({
      ...head,
      plans,
      counts,
      changed,
      computedDifferently: computed,
      left,
      historyOf,
    }),
    status: () => {
      if (counts['not judged'] > 0 || plans === 0) return 2;
      return counts['no longer passes'] + counts.worse > 0 ? 1 : 0;
    },
  };
}

function differs({ isOther, moved, gone, come, remarks, verdictThen, verdictAgain }: Computing): boolean {
  return (
    isOther || verdictThen !== verdictAgain || moved.length + gone.length + come.length + remarks.length > 0
  );
}

const ranks = { stop: 0, hold: 1, note: 2 } as const;

/** The rules behind one kind of change: those that change most plans first, of them the most serious. */
export function byRule({ changed, historyOf }: RecheckReport, change: Change): readonly RuleGroup[] {
  const groups = new Map<string, RuleGroup & { readonly plans: RecheckedPlan[] }>();
  for (const plan of changed) {
    if (plan.change !== change) continue;
    for (const { finding } of plan.reasons) {
      const { rule, pack, severity, why, instead, source } = finding;
      const key = JSON.stringify([pack, rule, severity]);
      const history = historyOf(rule);
      const group = groups.get(key) ?? {
        ...{ rule, pack, severity, why, instead, source, plans: [] },
        ...(history === undefined ? {} : { history }),
      };
      if (group.plans.at(-1) !== plan) group.plans.push(plan);
      groups.set(key, group);
    }
  }
  return [...groups.values()].sort(
    (a, b) =>
      b.plans.length - a.plans.length ||
      ranks[a.severity] - ranks[b.severity] ||
      (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0),
  );
}
