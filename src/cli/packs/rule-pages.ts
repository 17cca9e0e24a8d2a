import { packAt } from '../../packs/versions/pack-at.ts';
import type { Pack, Rule } from '../../packs/pack.ts';
import type { ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { rulePage } from '../../report/rules/rule-page.ts';
import type { RulePage } from '../../report/rules/rule-page.ts';
import { dictionary } from '../dictionary.ts';

/** The pages of the rules in force, layer by layer as they judge. */
export function pagesInForce(packs: readonly Pack[], { layers }: ResolvedPacks): readonly RulePage[] {
  return layers.flatMap(({ name, version, rules }) =>
    rules.map((rule) => {
      const raised = raisedFrom(packs, rule, name, version);
      const standing = { pack: name, version, inForce: true, ...(raised === undefined ? {} : { raised }) };
      return rulePage(rule, standing, dictionary);
    }),
  );
}

/** The page of a rule that some version holds and the one that judges does not; undefined when there is none of that id. */
export function pageOutOfForce(
  packs: readonly Pack[],
  { layers, standingOf }: ResolvedPacks,
  id: string,
): RulePage | undefined {
  for (const pack of packs) {
    const rule = pack.rules.find((one) => one.id === id);
    if (rule === undefined) continue;
    const version = layers.find(({ name }) => name === pack.name)?.version ?? pack.version;
    const standing = standingOf(id);
    const replacedBy = standing.kind === 'ended' ? standing.replacedBy : undefined;
    return rulePage(
      rule,
      { pack: pack.name, version, inForce: false, ...(replacedBy === undefined ? {} : { replacedBy }) },
      dictionary,
    );
  }
  return undefined;
}

function raisedFrom(packs: readonly Pack[], rule: Rule, owner: string, version: string): RulePage['raised'] {
  const stated = packs.find(({ name }) => name === owner)?.rules.find(({ id }) => id === rule.id);
  if (stated === undefined || stated.severity === rule.severity) return undefined;
  const by = packs.find((pack) =>
    packAt(pack, {
      version: pack.name === owner ? version : pack.version,
      digest: pack.digest,
      released: pack.released,
    }).raises?.some((raise) => raise.rule === rule.id && raise.to === rule.severity),
  );
  return { from: stated.severity, by: by?.name ?? 'a later layer' };
}
