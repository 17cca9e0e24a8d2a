import type { Verdict } from '../judge/verdict.ts';

/**
 * The exit status of a run: 0 cleared, or only held and every held plan is a draft; 1 stopped, or held at start or release; 2 when
 * something could not be judged.
 */
export function exitStatus(verdict: Verdict, heldAtDraft: boolean): 0 | 1 | 2 {
  switch (verdict) {
    case 'cleared':
      return 0;
    case 'held':
      return heldAtDraft ? 0 : 1;
    case 'stopped':
      return 1;
    case 'not judged':
      return 2;
  }
}
