import { brokenByTables } from './broken-by-tables.ts';
import { packAt, versionsOf } from './pack-at.ts';
import type { Pack, Rule, RuleSeverity } from '../pack.ts';
import { readVersion } from './semantic-version.ts';
import type { Version } from './semantic-version.ts';
import { begins, ends } from './version-step.ts';
import type { VersionStep } from './version-step.ts';

/** What a version promises beside the one before it: a patch worsens nothing, a minor stops nothing, a major may. */
export type Step = 'patch' | 'minor' | 'major';

/** How far a later version is from an earlier one. */
export function stepBetween(from: Version, to: Version): Step {
  if (from[0] !== to[0]) return 'major';
  return from[1] === to[1] ? 'patch' : 'minor';
}

/** One thing in a version that its number does not allow. */
export interface BrokenPromise {
  readonly version: string;
  readonly sentence: string;
}

/**
 * What a pack's own items break of its promise, version by version: a rule that begins to stop in a minor version, a limit that is
 * tightened in a patch. What only shows on plans (a rule that finds more than the one whose place it takes) a corpus shows.
 */
export function brokenPromises(pack: Pack): readonly BrokenPromise[] {
  const versions = versionsOf(pack);
  return versions.slice(1).flatMap((version, index) => {
    const before = versions[index];
    const [from, to] = [readVersion(before?.version ?? ''), readVersion(version.version)];
    if (before === undefined || from === undefined || to === undefined) return [];
    const step = stepBetween(from, to);
    if (step === 'major') return [];
    const between = { from, to, step, old: packAt(pack, before) };
    return [brokenByRules, brokenByOthers, brokenByTables]
      .flatMap((tell) => tell(pack, between))
      .map((sentence) => ({
        version: version.version,
        sentence: `${sentence}, which a ${step} version does not.`,
      }));
  });
}

const ranks: Readonly<Record<RuleSeverity, number>> = { note: 0, hold: 1, stop: 2 };

function brokenByRules(pack: Pack, between: VersionStep): readonly string[] {
  const worst = ranks[between.step === 'patch' ? 'note' : 'hold'];
  const begun = pack.rules.filter((rule) => begins(rule, between));
  return [
    ...begun
      .filter((rule) => ranks[rule.severity] > Math.max(worst, rankReplaced(pack, rule, between)))
      .map((rule) => `The rule \`${rule.id}\` begins to ${rule.severity}`),
    ...(pack.raises ?? [])
      .filter((raise) => begins(raise, between) && ranks[raise.to] > worst)
      .map((raise) => `The rule \`${raise.rule}\` is raised to a ${raise.to}`),
  ];
}

/** Of the rules that end in this step and name this one, the severest. */
function rankReplaced(pack: Pack, rule: Rule, between: VersionStep): number {
  const replaced = pack.rules.filter((one) => one.replacedBy === rule.id && ends(one, between));
  return Math.max(-1, ...replaced.map(({ severity }) => ranks[severity]));
}

function brokenByOthers(pack: Pack, between: VersionStep): readonly string[] {
  const limits = pack.limits.filter((limit) => {
    if (!begins(limit, between)) return false;
    const before = between.old.limits.find(({ victim }) => victim === limit.victim);
    const isTighter = (now: number | undefined, old: number | undefined): boolean =>
      now !== undefined && (old === undefined || now < old);
    const stops =
      isTighter(limit.stopAboveCelsius, before?.stopAboveCelsius) ||
      isTighter(limit.timeAbove?.celsius, before?.timeAbove?.celsius) ||
      isTighter(limit.timeAbove?.atMostSeconds, before?.timeAbove?.atMostSeconds);
    const holds = isTighter(limit.holdAboveCelsius, before?.holdAboveCelsius);
    return stops || (between.step === 'patch' && holds);
  });
  // What the maker prescribes or forbids stops; what it no longer permits no longer lifts a stop.
  const provisions = pack.provisions.filter((one) =>
    begins(one, between)
      ? one.shall.length + one.shallNot.length > 0
      : ends(one, between) && one.shall.length + one.may.length > 0,
  );
  return [
    ...limits.map(({ victim }) => `The limit for \`${victim}\` is tightened`),
    ...provisions.map(
      ({ part, document }) => `What ${document} says of a ${part} begins to forbid, or no longer permits`,
    ),
  ];
}
