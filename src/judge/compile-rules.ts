import type { FactDictionary } from '../packs/fact-dictionary.ts';
import type { Rule, Stage } from '../packs/pack.ts';
import type { ResolvedPacks } from '../packs/resolve-packs.ts';

/** A rule with what is needed at every question and does not change between plans. */
export interface CompiledRule {
  readonly rule: Rule;
  readonly pack: string;
  /** Its place among all rules: layers in order, then as written. */
  readonly order: number;
  readonly fromRank: number;
}

/** Rules ready to be asked. Made once for a resolved set of packs, used for any number of plans. */
export interface CompiledRules {
  readonly byKind: ReadonlyMap<string, readonly CompiledRule[]>;
  readonly dictionary: FactDictionary;
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
  return { byKind, dictionary };
}
