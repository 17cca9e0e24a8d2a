import { changesSince } from './changed-since.ts';
import { findPlans } from '../plans/find-plans.ts';
import { ignoreFileName } from '../plans/ignore-files.ts';
import type { PlanSource } from '../plans/plan-source.ts';

export interface ChosenSources {
  readonly sources: readonly PlanSource[];
  /** What the user should know of the choice. */
  readonly remarks: readonly string[];
  /** That no plan comes of it is then no fault. */
  readonly mayBeEmpty: boolean;
}

export type Choice =
  ({ readonly ok: true } & ChosenSources) | { readonly ok: false; readonly sentence: string };

/**
 * What is to be judged: all that the arguments name, or of that what was changed since a commit. Where the rules or what is passed
 * over were changed, every plan may come out otherwise, and all are judged.
 */
export function chooseSources(
  args: readonly string[],
  workingFolder: string,
  ruleFolders: readonly string[],
  changedSince: string | undefined,
): Choice {
  const sources = findPlans(args, workingFolder);
  if (changedSince === undefined) return { ok: true, sources, remarks: [], mayBeEmpty: false };
  const changes = changesSince(changedSince, workingFolder);
  if (!changes.ok) return changes;
  const since = `changed since ${changedSince}`;
  if (ruleFolders.some(changes.isChangedBelow))
    return {
      ok: true,
      sources,
      remarks: [`The rules were ${since}: every plan is judged.`],
      mayBeEmpty: false,
    };
  if (changes.isNameChanged(ignoreFileName))
    return {
      ok: true,
      sources,
      remarks: [`${ignoreFileName} was ${since}: every plan is judged.`],
      mayBeEmpty: false,
    };
  const chosen = sources.filter((source) => source.kind !== 'file' || changes.isChanged(source.path));
  const files = sources.filter(({ kind }) => kind === 'file').length;
  const left = sources.length - chosen.length;
  const remarks = left === 0 ? [] : [`${String(left)} of ${String(files)} files were not ${since}.`];
  return { ok: true, sources: chosen, remarks, mayBeEmpty: files > 0 };
}
