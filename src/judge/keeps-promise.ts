import type { Step } from '../packs/versions/semantic-promise.ts';
import { verdicts } from './verdict.ts';
import type { Verdict } from './verdict.ts';

/** Whether the verdict of one plan may become another with a step of this size between two versions of a pack. */
export function keepsPromise(step: Step, before: Verdict, after: Verdict): boolean {
  const worsened = verdicts.indexOf(after) > verdicts.indexOf(before);
  if (!worsened) return true;
  if (step === 'patch') return false;
  return step === 'minor' ? after === 'held' : after !== 'not judged';
}
