import type { Severity } from '../judge/finding.ts';
import { verdicts } from '../judge/verdict.ts';
import type { Verdict } from '../judge/verdict.ts';
import type { PlanReport } from './plan-report.ts';

/** How often one rule found something. */
export interface RuleTotal {
  readonly rule: string;
  readonly pack: string;
  /** The worst it gave. */
  readonly severity: Severity;
  readonly findings: number;
  readonly plans: number;
}

export interface FolderTotal {
  /** As shown, `.` for the working folder. */
  readonly folder: string;
  readonly plans: number;
  readonly verdicts: Readonly<Record<Verdict, number>>;
}

/** Counts over a run by rule and by folder; its size grows with those, not with the plans. */
export interface RunSummary {
  readonly add: (plan: PlanReport) => void;
  /** The worst first, then the most frequent. */
  readonly rules: () => readonly RuleTotal[];
  /** The one with the worst plan first, then by name. */
  readonly folders: () => readonly FolderTotal[];
}

const rank: Readonly<Record<Severity, number>> = { stop: 0, hold: 1, note: 2 };

export function runSummary(): RunSummary {
  const rules = new Map<string, { -readonly [K in keyof RuleTotal]: RuleTotal[K] }>();
  const folders = new Map<string, { folder: string; plans: number; verdicts: Record<Verdict, number> }>();
  return {
    add: (plan) => {
      const folder = folderOf(plan.file);
      const total = folders.get(folder) ?? { folder, plans: 0, verdicts: noVerdicts() };
      folders.set(folder, total);
      total.plans += 1;
      total.verdicts[plan.verdict] += 1;
      const met = new Set<string>();
      for (const { finding } of plan.findings) {
        const { rule, pack, severity } = finding;
        const key = JSON.stringify([pack, rule]);
        const one = rules.get(key) ?? { rule, pack, severity, findings: 0, plans: 0 };
        rules.set(key, one);
        one.findings += 1;
        if (!met.has(key)) one.plans += 1;
        met.add(key);
        if (rank[severity] < rank[one.severity]) one.severity = severity;
      }
    },
    rules: () =>
      [...rules.values()].sort(
        (a, b) =>
          rank[a.severity] - rank[b.severity] ||
          b.plans - a.plans ||
          b.findings - a.findings ||
          byCodeUnits(a.rule, b.rule) ||
          byCodeUnits(a.pack, b.pack),
      ),
    folders: () =>
      [...folders.values()].sort(
        (a, b) => worst(b.verdicts) - worst(a.verdicts) || byCodeUnits(a.folder, b.folder),
      ),
  };
}

function noVerdicts(): Record<Verdict, number> {
  return { cleared: 0, held: 0, stopped: 0, 'not judged': 0 };
}

function worst(counts: Readonly<Record<Verdict, number>>): number {
  return verdicts.findLastIndex((verdict) => counts[verdict] > 0);
}

function folderOf(file: string): string {
  const end = file.lastIndexOf('/');
  return end === -1 ? '.' : end === 0 ? '/' : file.slice(0, end);
}

function byCodeUnits(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
