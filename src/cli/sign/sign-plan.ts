import { checkPlan } from '../../plan/check-plan.ts';
import { canonicalPlan, planDigest } from '../../plan/plan-canonical.ts';
import type { LocatedNode } from '../../plan/node.ts';
import { readYaml } from '../../plan/read-yaml.ts';
import { signOffLines, withSignOff } from '../../plan/sign-off-text.ts';
import type { Signature, SignatureDigests } from '../../plan/sign-off-text.ts';
import type { PlanReport } from '../../report/plan-report.ts';
import type { EditablePlan } from './editable-plan.ts';

export type Signing =
  | {
      readonly kind: 'signed';
      readonly text: string;
      readonly report: PlanReport;
      readonly signature: Signature;
      readonly digests: SignatureDigests;
    }
  /** Something is found in the plan as it would stand signed. */
  | { readonly kind: 'open'; readonly report: PlanReport }
  | { readonly kind: 'no place'; readonly sentence: string };

const noPlace =
  'A sign-off block cannot be written into this plan as its text is laid out; write the keys at its top on lines of their own.';

/**
 * The plan as it stands once signed, judged by `judge`. Twice: which packs judge it is known only then, and with their digests in
 * the block it is judged as it will be found.
 */
export function signPlan(
  plan: EditablePlan,
  who: Pick<Signature, 'name' | 'role' | 'qualification' | 'date'>,
  by: Pick<SignatureDigests, 'planish' | 'facts'>,
  judge: (text: string) => PlanReport,
): Signing {
  const before = withoutSignOff(plan.root);
  const checked = checkPlan(plan.root);
  const planRevision = checked.ok ? checked.plan.job?.revision : undefined;
  const first = judge(plan.text);
  if (first.packs === undefined) return { kind: 'open', report: first };
  const packs = first.packs.map(({ pack, version, digest }) => ({ pack, version, digest }));
  const signature: Signature = { ...who, planRevision, noOpenHolds: first.counts.accepted === 0 };
  const bare = written(plan, before, signature, { ...by, packs });
  if (bare === undefined) return { kind: 'no place', sentence: noPlace };
  const digests = { plan: planDigest(bare.root), ...by, packs };
  const whole = written(plan, before, signature, digests);
  if (whole === undefined || planDigest(whole.root) !== digests.plan)
    return { kind: 'no place', sentence: noPlace };
  const report = judge(whole.text);
  return report.verdict === 'cleared'
    ? { kind: 'signed', text: whole.text, report, signature, digests }
    : { kind: 'open', report };
}

/** Read back: that nothing but the signature changed is looked at, not trusted. */
function written(
  plan: EditablePlan,
  before: string,
  signature: Signature,
  digests: Partial<SignatureDigests>,
): { readonly text: string; readonly root: LocatedNode } | undefined {
  const text = withSignOff(plan.text, plan.root, signOffLines(signature, digests));
  if (text === undefined) return undefined;
  const yaml = readYaml(text);
  return yaml.ok && withoutSignOff(yaml.root) === before ? { text, root: yaml.root } : undefined;
}

function withoutSignOff(root: LocatedNode): string {
  if (root.kind !== 'map') return canonicalPlan(root);
  const entries = new Map([...root.entries].filter(([key]) => key !== 'sign_off'));
  return canonicalPlan({ ...root, entries });
}
