import type { FactDictionary } from '../packs/fact-dictionary.ts';
import type { Stage } from '../packs/pack.ts';
import type { CompiledRule } from './compiled-rule.ts';
import type { ResolvedPacks } from '../packs/layers/resolve-packs.ts';
import { ruleTree } from './rule-tree.ts';
import type { RuleTree } from './rule-tree.ts';

/** Rules ready to be asked. Made once for a resolved set of packs, used for any number of plans. */
export interface CompiledRules {
  readonly byKind: ReadonlyMap<string, readonly CompiledRule[]>;
  /** The rules of a kind that judge at a stage. */
  readonly atStage: (kind: string, stage: Stage) => RulesAtStage;
  readonly dictionary: FactDictionary;
}

export interface RulesAtStage {
  readonly count: number;
  readonly tree: RuleTree;
}

const stageRank: Readonly<Record<Stage, number>> = { draft: 0, start: 1, release: 2 };

export function rankOfStage(stage: Stage): number {
  return stageRank[stage];
}

/** Groups the rules of all layers by the kind of sheet that they judge. */
export function compileRules(
  packs: Pick<ResolvedPacks, 'layers'>,
  dictionary: FactDictionary,
): CompiledRules {
  const byKind = new Map<string, CompiledRule[]>();
  let order = 0;
  for (const layer of packs.layers) {
    for (const rule of layer.rules) {
      const compiled = { rule, pack: layer.name, order, fromRank: stageRank[rule.from] };
      order += 1;
      const group = byKind.get(rule.judges);
      if (group === undefined) byKind.set(rule.judges, [compiled]);
      else group.push(compiled);
    }
  }
  return { byKind, atStage: rulesAtStage(byKind), dictionary };
}

/** Each tree is made when a sheet of its kind is first judged. */
function rulesAtStage(byKind: CompiledRules['byKind']): CompiledRules['atStage'] {
  const made = new Map<Stage, Map<string, RulesAtStage>>();
  return (kind, stage) => {
    const ofStage = made.get(stage) ?? new Map<string, RulesAtStage>();
    made.set(stage, ofStage);
    const before = ofStage.get(kind);
    if (before !== undefined) return before;
    const rank = stageRank[stage];
    const rules = (byKind.get(kind) ?? []).filter(({ fromRank }) => fromRank <= rank);
    const answer = { count: rules.length, tree: ruleTree(rules) };
    ofStage.set(kind, answer);
    return answer;
  };
}
