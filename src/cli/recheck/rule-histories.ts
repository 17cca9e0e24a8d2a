import type { Pack } from '../../packs/pack.ts';
import type { RuleHistory } from '../../recheck/recheck-report.ts';

/** What the packs say of when a rule began and ended, and whose place it took. */
export function ruleHistories(packs: readonly Pack[]): (rule: string) => RuleHistory | undefined {
  let histories: ReadonlyMap<string, RuleHistory> | undefined;
  return (rule) => {
    histories ??= historiesIn(packs);
    return histories.get(rule);
  };
}

function historiesIn(packs: readonly Pack[]): ReadonlyMap<string, RuleHistory> {
  const rules = packs.flatMap((pack) => pack.rules);
  return new Map(
    rules.map(({ id, since, until, replacedBy }) => [
      id,
      {
        since,
        ...(until === undefined ? {} : { until }),
        ...(replacedBy === undefined ? {} : { replacedBy }),
        replaces: rules.filter((other) => other.replacedBy === id).map((other) => other.id),
      },
    ]),
  );
}
