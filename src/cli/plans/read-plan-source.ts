import { createHash } from 'node:crypto';
import type { Plan } from '../../generated/plan-types.ts';
import { checkPlan } from '../../plan/check-plan.ts';
import { decodeText } from '../../plan/decode-text.ts';
import type { EntryFault } from '../../plan/entry-fault.ts';
import type { ReadFault } from '../../plan/fault.ts';
import type { LocatedNode } from '../../plan/node.ts';
import { readYaml } from '../../plan/read-yaml.ts';
import { placeOf } from '../../plan/source-text.ts';
import type { SourceText } from '../../plan/source-text.ts';
import type { PlanReport, SeverityCounts } from '../../report/plan-report.ts';

/** A plan that is read and checked against its form. */
export interface ReadPlan {
  readonly kind: 'read';
  readonly plan: Plan;
  readonly faults: readonly EntryFault[];
  readonly source: SourceText;
  readonly root: LocatedNode;
  readonly digest: string;
  /** The vehicle and the job, as far as the plan names them. */
  readonly title?: string;
}

/** What comes of a source that is no readable plan. */
export type UnreadAnswer =
  | { readonly kind: 'plan'; readonly report: PlanReport }
  /** A pack or a scenario among the plans of a folder. */
  | { readonly kind: 'skipped' }
  | { readonly kind: 'not a plan' };

const none: SeverityCounts = { stop: 0, hold: 0, note: 0, accepted: 0 };

/** Reads one plan. `named` files are taken for plans whatever they hold; of a folder only plans are. */
export function readPlanSource(file: string, bytes: Uint8Array, named: boolean): ReadPlan | UnreadAnswer {
  const digest = `sha256:${createHash('sha256').update(bytes).digest('hex')}`;
  const decoded = decodeText(bytes);
  if (!decoded.ok) return notJudged({ path: file, text: decoded.text }, [decoded.fault], digest);
  const source: SourceText = { path: file, text: decoded.text };
  const yaml = readYaml(decoded.text);
  if (!yaml.ok) return notJudged(source, yaml.faults, digest);
  if (!named) {
    const kind = kindOf(yaml.root);
    if (kind !== 'plan') return { kind };
  }
  const checked = checkPlan(yaml.root);
  if (!checked.ok) return notJudged(source, checked.faults, digest);
  const { plan, faults } = checked;
  const title = titleOf(plan);
  return {
    kind: 'read',
    plan,
    faults,
    source,
    root: yaml.root,
    digest,
    ...(title === '' ? {} : { title }),
  };
}

/** A plan that was read and whose packs cannot be had; the place is where it asks for them. */
export function withoutPacks(
  { source, root, digest }: ReadPlan,
  sentences: readonly string[],
): UnreadAnswer & { readonly kind: 'plan' } {
  const range = rulesRange(root);
  return notJudged(
    source,
    sentences.map((sentence) => ({ sentence, range })),
    digest,
  );
}

function titleOf({ vehicle: { maker, model, body, model_year: year }, job }: Plan): string {
  const vehicle = [maker, model, body, year].filter((word) => word !== undefined).join(' ');
  const number = job?.number === undefined ? '' : `job ${job.number}`;
  return [vehicle, number].filter((word) => word !== '').join(', ');
}

/** Where the plan says by which packs it is judged, as far as it does. */
function rulesRange(root: LocatedNode): LocatedNode['range'] {
  const entry = root.kind === 'map' ? root.entries.get('rules') : undefined;
  return entry?.value.range ?? root.range;
}

/** Whether a YAML file of a folder is a plan. */
export function isPlan(root: LocatedNode): boolean {
  return kindOf(root) === 'plan';
}

/** What a YAML file of a folder is, by its top-level keys. */
function kindOf(root: LocatedNode): 'plan' | 'skipped' | 'not a plan' {
  if (root.kind !== 'map') return 'not a plan';
  if (root.entries.has('pack') || root.entries.has('scenario')) return 'skipped';
  return root.entries.has('format') && root.entries.has('parts') ? 'plan' : 'not a plan';
}

function notJudged(
  source: SourceText,
  faults: readonly ReadFault[],
  digest: string,
): UnreadAnswer & { readonly kind: 'plan' } {
  return {
    kind: 'plan',
    report: {
      ...unread(source.path),
      digest,
      notJudged: faults.map(({ sentence, range }) =>
        range === undefined ? { sentence } : { sentence, place: placeOf(source, range) },
      ),
    },
  };
}

/** The report of a plan of which nothing could be judged. */
export function unread(file: string, sentence?: string): PlanReport {
  return {
    file,
    verdict: 'not judged',
    counts: none,
    lifted: [],
    notJudged: sentence === undefined ? [] : [{ sentence }],
    findings: [],
  };
}
