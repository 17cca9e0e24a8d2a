import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isMap, isScalar, parseDocument, visit } from 'yaml';
import { canonicalPlan, planDigest } from '../../src/plan/plan-canonical.ts';
import type { LocatedNode } from '../../src/plan/node.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { anyPlan } from '../any-plan.ts';

function rootOf(text: string): LocatedNode {
  const yaml = readYaml(text);
  if (!yaml.ok) throw new Error(yaml.faults[0]?.sentence ?? 'unread');
  return yaml.root;
}
const form = (text: string): string => canonicalPlan(rootOf(text));
const digest = (text: string): string => planDigest(rootOf(text));

const plan = `# A ring.
format: 1
vehicle: { model_year: 2021, maker: Corvane }
parts:
  - id: ring-l
    structural: true
    thickness: # not known yet
job: { revision: 1.10, note: "a\\tb" }
sign_off: { date: 2026-10-17, digests: { plan: sha256:00, packs: [] } }
`;

describe('the canonical form of a plan', () => {
  // Put together by hand after RFC 8785 and the words beside `canonicalPlan`.
  const byHand =
    '{"format":"1","job":{"note":"a\\tb","revision":"1.10"},"parts":[{"id":"ring-l","structural":true,"thickness":null}],"sign_off":{"date":"2026-10-17","digests":{"packs":[]}},"vehicle":{"maker":"Corvane","model_year":"2021"}}\n';

  test('is what was put together by hand, and the digest is its sha256sum', () => {
    expect(form(plan)).toBe(byHand);
    const { stdout, status } = spawnSync('sha256sum', { input: byHand, encoding: 'utf8' });
    expect(status).toBe(0);
    expect(digest(plan)).toBe(`sha256:${stdout.slice(0, 64)}`);
  });

  test.each([
    ['comments', plan.replace('# A ring.', '# Another ring.')],
    ['line ends', plan.replaceAll('\n', '\r\n')],
    [
      'the order of keys',
      plan.replace('model_year: 2021, maker: Corvane', 'maker: Corvane, model_year: 2021'),
    ],
    ['quotes', plan.replace('maker: Corvane', "maker: 'Corvane'")],
    ['the digest itself', plan.replace('sha256:00', 'sha256:11')],
  ])('does not count %s', (_what, other) => {
    expect(other).not.toBe(plan);
    expect(form(other)).toBe(byHand);
  });

  test.each([
    ['a value', plan.replace('2021', '2022')],
    ['a zero at the end of a revision', plan.replace('1.10', '1.1')],
    ['a key that no plan has', plan.replace('id: ring-l', 'id: ring-l\n    thicknes: 1 mm')],
    ['a key with nothing behind it', plan.replace('    thickness: # not known yet\n', '')],
    ['who signed, and when', plan.replace('2026-10-17', '2026-10-18')],
    ['the packs of the signature', plan.replace('packs: []', 'packs: [{ pack: general }]')],
    ['a digest elsewhere', plan.replace('id: ring-l', 'id: ring-l\n    digests: { plan: sha256:00 }')],
    ['a key `__proto__`', plan.replace('id: ring-l', 'id: ring-l\n    __proto__: 1')],
  ])('counts %s', (_what, other) => {
    expect(other).not.toBe(plan);
    expect(form(other)).not.toBe(byHand);
  });

  test('counts the order of a list', () => {
    expect(form('parts: [{ id: a }, { id: b }]')).not.toBe(form('parts: [{ id: b }, { id: a }]'));
  });
});

test('whatever single value of whatever plan is changed, or key taken out, the digest is another one', () => {
  fc.assert(
    fc.property(anyPlan, fc.nat(), fc.boolean(), (text, choice, takeOut) => {
      const document = parseDocument(text);
      const changes: (() => void)[] = [];
      visit(document, {
        Pair: (_key, pair, ancestors) => {
          const parent = ancestors.at(-1);
          const { value } = pair;
          if (takeOut && isMap(parent))
            changes.push(() => void parent.items.splice(parent.items.indexOf(pair), 1));
          if (!takeOut && isScalar(value)) changes.push(() => void (value.value = 'another value'));
        },
      });
      const change = changes[choice % Math.max(changes.length, 1)];
      fc.pre(change !== undefined);
      const before = digest(text);
      change();
      expect(digest(document.toString())).not.toBe(before);
    }),
    { numRuns: 120 },
  );
});
