import type { Change } from './one-change.ts';

/** One thing wrong in a plan that is cleared without it. */
export interface Fault {
  readonly name: string;
  readonly plan: string;
  readonly changes: readonly Change[];
  readonly rule: string;
  readonly severity: 'stop' | 'hold';
  /** Text that stands on the line of the finding. */
  readonly on: string;
}
