import type { DraftFinding } from './draft-finding.ts';

/**
 * Without what one rule says twice of one place in the same words: a spot gun and a drill on the same flange endanger the same unit. The
 * first of them in the given order stays, and stands for a stop where any of them does.
 */
export function withoutAlike(drafts: readonly DraftFinding[]): readonly DraftFinding[] {
  const kept = new Map<string, DraftFinding>();
  for (const draft of drafts) {
    const { pack, rule, pointer, message, instead } = draft;
    const key = JSON.stringify([pack, rule, draft.part, pointer, message, instead]);
    const before = kept.get(key);
    if (before === undefined) kept.set(key, draft);
    else if (draft.standsForStop && !before.standsForStop) kept.set(key, { ...before, standsForStop: true });
  }
  return [...kept.values()];
}
