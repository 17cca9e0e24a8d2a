import { nearestWords } from '../../plan/nearest-word.ts';
import { refuse } from './choose-versions.ts';
import type { ChosenPack, Refusal } from './choose-versions.ts';
import { placeKey } from '../pack.ts';
import type { Raise, Rule, RuleSeverity } from '../pack.ts';

const ranks: Readonly<Record<RuleSeverity, number>> = { note: 0, hold: 1, stop: 2 };

export type RaisedRules =
  | {
      readonly ok: true;
      /** Rules by the name of their pack. */ readonly rules: ReadonlyMap<string, readonly Rule[]>;
    }
  | Refusal;

/**
 * The rules of each pack in force, with the severity that a later one raised them to. A pack that would lower a rule, or leaves it
 * as it is, is refused, and one that raises a rule which no pack under it ever had.
 */
export function raiseRules(packs: readonly ChosenPack[]): RaisedRules {
  const raised = new Map<string, { readonly raise: Raise; readonly by: string }>();
  for (const [index, { at, whole }] of packs.entries()) {
    if ((whole.raises ?? []).length === 0) continue;
    const under = packs.slice(0, index).flatMap((one) => one.whole.rules);
    for (const raise of whole.raises ?? []) {
      const place = whole.places?.[placeKey('raise', raise.rule)];
      const rule = under.find(({ id }) => id === raise.rule);
      if (rule === undefined) {
        const near = nearestWords(
          raise.rule,
          under.map(({ id }) => id),
        );
        const hint = near.length === 0 ? '' : ` Nearest known: \`${near.join('`, `')}\`.`;
        return refuse(`No pack below ${whole.name} has a rule \`${raise.rule}\`.${hint}`, place);
      }
      if (ranks[raise.to] <= ranks[rule.severity]) {
        return refuse(
          `\`${rule.id}\` is a ${rule.severity} already; the pack ${whole.name} may raise it and not make it a ${raise.to}.`,
          place,
        );
      }
    }
    for (const raise of at.raises ?? []) {
      const before = raised.get(raise.rule);
      if (before === undefined || ranks[raise.to] > ranks[before.raise.to]) {
        raised.set(raise.rule, { raise, by: `${at.name} ${at.version}` });
      }
    }
  }
  return {
    ok: true,
    rules: new Map(
      packs.map(({ at }) => [
        at.name,
        raised.size === 0 ? at.rules : at.rules.map((rule) => withSeverity(rule, raised.get(rule.id))),
      ]),
    ),
  };
}

function withSeverity(rule: Rule, raised: { readonly raise: Raise; readonly by: string } | undefined): Rule {
  if (raised === undefined) return rule;
  const { raise, by } = raised;
  return {
    ...rule,
    severity: raise.to,
    why: `${rule.why} Raised from a ${rule.severity} to a ${raise.to} by pack ${by}: ${raise.why}`,
  };
}
