import { checkCases } from '../../src/judge/check-cases.ts';
import type { Pack, Rule, RuleSeverity } from '../../src/packs/pack.ts';
import type { Fault } from '../fault.ts';
import { mutantsOf } from './mutants-of.ts';
import { stopsWithoutPlan } from './stops-without-plan.ts';

/** How many changed rules of one severity a case, a plan or the list of stops notices. */
export interface Score {
  readonly severity: RuleSeverity;
  readonly caught: number;
  readonly of: number;
  /** Of these, what nothing notices. */
  readonly survivors: readonly string[];
}

/** Who notices that a rule is gone, or is taken less seriously: its cases say nothing of either. */
export function witnessOf({ id, severity }: Rule, faults: readonly Fault[]): 'plan' | 'list' | undefined {
  if (faults.some((fault) => fault.rule === id && fault.severity === severity)) return 'plan';
  return severity === 'stop' && stopsWithoutPlan.includes(id) ? 'list' : undefined;
}

/**
 * The mutation score of a pack, by severity. Lines and limits are put to the rule's own cases. That a rule is removed or lowered, a
 * plan must notice that names the rule and its severity by hand (`faults-of-*.ts`), or the list of stops. A note has
 * nothing under it, and no plan has to show it: only its lines are asked about.
 */
export function scoresOf(pack: Pack, faults: readonly Fault[]): readonly Score[] {
  return (['stop', 'hold', 'note'] as const).map((severity) => {
    const rules = pack.rules.filter((rule) => rule.severity === severity);
    const ofLines = rules.flatMap((rule) =>
      mutantsOf(rule).map(({ what, mutant }) => ({
        name: `${rule.id}: ${what}`,
        isCaught: checkCases({ rules: [mutant] }).length > 0,
      })),
    );
    // A rule that ended judges nothing today; that its release keeps it, its digest says.
    const inForce = severity === 'note' ? [] : rules.filter(({ until }) => until === undefined);
    const ofWhole = inForce.flatMap((rule) =>
      ['removed', 'taken less seriously'].map((what) => ({
        name: `${rule.id}: ${what}`,
        isCaught: witnessOf(rule, faults) !== undefined,
      })),
    );
    const all = [...ofLines, ...ofWhole];
    const survivors = all.filter(({ isCaught }) => !isCaught).map(({ name }) => name);
    return { severity, caught: all.length - survivors.length, of: all.length, survivors };
  });
}

/** The score as it is printed. */
export function scoreText({ severity, caught, of }: Score): string {
  return `${severity}s: ${String(caught)} of ${String(of)} mutants caught (${((caught / of) * 100).toFixed(1)} %)`;
}
