import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import type { Fact } from '../../src/facts/fact.ts';
import { lookUp } from '../../src/facts/sheet.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { askRule } from '../../src/judge/ask-rule.ts';
import { compileRules, rankOfStage } from '../../src/judge/compile-rules.ts';
import { judgeSheets } from '../../src/judge/judge-sheets.ts';
import { ruleTree, rulesIn } from '../../src/judge/rule-tree.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import { sheetsOf } from '../derive-text.ts';

const resolved = resolvePacks(builtInPacks(), undefined);
if (!resolved.ok) throw new Error(resolved.sentence);
const rules = compileRules(resolved.packs, dictionary);
const folder = path.join(import.meta.dirname, '../../examples/plans');

describe('rules laid together by their lines', () => {
  it('loses none and doubles none', () => {
    for (const group of rules.byKind.values()) {
      const inTree = rulesIn(ruleTree(group)).map(({ rule }) => rule.id);
      expect(inTree.toSorted()).toEqual(group.map(({ rule }) => rule.id).toSorted());
    }
  });

  it.each(readdirSync(folder))('come out as each asked alone: %s', (name) => {
    const sheets = sheetsOf(readFileSync(path.join(folder, name), 'utf8'));
    const missing: Fact = { known: false, reason: 'No sheet holds it' };
    const counts = { passed: 0, found: 0, lifted: 0, unknown: 0 };
    for (const sheet of sheets) {
      for (const { rule, fromRank } of rules.byKind.get(sheet.kind) ?? []) {
        if (fromRank > rankOfStage('release')) continue;
        counts[askRule(rule, (fact) => lookUp(sheet, fact) ?? missing).kind] += 1;
      }
    }
    const { passed, found, lifted, couldNotTell, failed } = judgeSheets(sheets, rules, 'release').counts;
    expect({ passed, found, lifted, unknown: couldNotTell, failed }).toEqual({ ...counts, failed: 0 });
    expect(counts.found + counts.unknown + counts.passed).toBeGreaterThan(500);
  });
});
