import type { RuleStanding } from '../../facts/context.ts';
import { nearestWords } from '../../plan/nearest-word.ts';
import type { ChosenPack } from './choose-versions.ts';
import { compareVersions, readVersion } from '../versions/semantic-version.ts';

/** What is known of a rule id in the packs that judge: ids are never used again, so an old one still has an answer. */
export function ruleStanding(packs: readonly ChosenPack[], id: string): RuleStanding {
  for (const { whole, at } of packs) {
    const rule = whole.rules.find((one) => one.id === id);
    if (rule === undefined) continue;
    if (at.rules.some((one) => one.id === id)) return { kind: 'current' };
    const [now, until] = [at.version, rule.until].map((text) =>
      text === undefined ? undefined : readVersion(text),
    );
    const ended = now !== undefined && until !== undefined && compareVersions(now, until) >= 0;
    if (!ended) return { kind: 'later', with: `${whole.name} ${rule.since}` };
    const successor = successorOf(packs, rule.replacedBy);
    return {
      kind: 'ended',
      with: `${whole.name} ${rule.until ?? ''}`,
      ...(successor === undefined ? {} : { replacedBy: successor }),
    };
  }
  return {
    kind: 'no such rule',
    nearest: nearestWords(
      id,
      packs.flatMap(({ at }) => at.rules.map((rule) => rule.id)),
    ),
  };
}

/** The end of the line of successors; a ring, which is a slip of the pack, ends where it closes. */
function successorOf(packs: readonly ChosenPack[], first: string | undefined): string | undefined {
  const rules = new Map(packs.flatMap(({ whole }) => whole.rules.map((rule) => [rule.id, rule] as const)));
  const inForce = new Set(packs.flatMap(({ at }) => at.rules.map(({ id }) => id)));
  const seen = new Set<string>();
  let id = first;
  while (id !== undefined && !inForce.has(id) && !seen.has(id)) {
    seen.add(id);
    id = rules.get(id)?.replacedBy;
  }
  return id !== undefined && inForce.has(id) ? id : undefined;
}
