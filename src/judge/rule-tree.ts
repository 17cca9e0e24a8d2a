import type { Line } from '../packs/pack.ts';
import type { CompiledRule } from './compiled-rule.ts';

/** Rules laid together by the lines that they begin with, so that a line that many share is put to a sheet once. */
export interface RuleTree {
  /** Rules of which every line has been asked on the way here. */
  readonly rules: CompiledRule[];
  readonly branches: RuleBranch[];
}

export interface RuleBranch {
  readonly line: Line;
  readonly below: RuleTree;
}

/** The order of lines in each rule stays. */
export function ruleTree(rules: readonly CompiledRule[]): RuleTree {
  const tree = emptyTree();
  const grown = new Map<RuleTree, Map<string, RuleTree>>();
  for (const rule of rules) {
    let node = tree;
    for (const line of rule.rule.when) {
      const children = grown.get(node) ?? new Map<string, RuleTree>();
      grown.set(node, children);
      const key = lineKey(line);
      let below = children.get(key);
      if (below === undefined) {
        below = emptyTree();
        children.set(key, below);
        node.branches.push({ line, below });
      }
      node = below;
    }
    node.rules.push(rule);
  }
  return tree;
}

/** Every rule of the tree. */
export function rulesIn({ rules, branches }: RuleTree): readonly CompiledRule[] {
  return [...rules, ...branches.flatMap(({ below }) => rulesIn(below))];
}

function emptyTree(): RuleTree {
  return { rules: [], branches: [] };
}

/** The same for lines that ask the same. */
function lineKey({ fact, test }: Line): string {
  if ('known' in test) return `${fact} ${test.known ? 'known' : 'unknown'}`;
  if ('anyOf' in test) return `${fact} ${typeof test.anyOf[0]} ${test.anyOf.join('|')}`;
  const { min, max, above, below } = test.range;
  return `${fact} ${String(min)} ${String(max)} ${String(above)} ${String(below)}`;
}
