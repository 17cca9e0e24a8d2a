import { complain } from '../complain.ts';
import type { Interruption } from '../interruption.ts';
import { expectMany } from './expect-many.ts';
import type { PlanSource } from './plan-source.ts';
import type { Progress } from '../reporting/progress.ts';
import { tellNoPlans } from '../tell-few.ts';

/** What is no plan to be judged. `elsewhere`: it falls to another part of the job; `remark`: only something to say. */
export type Aside =
  | { readonly kind: 'skipped' | 'not a plan' | 'elsewhere' }
  | { readonly kind: 'remark'; readonly sentence: string };

export interface Walk {
  readonly progress: Progress;
  readonly interruption: Interruption;
  /** Judges a source; undefined when it was a plan, of which all is said. */
  readonly take: (source: PlanSource) => Aside | undefined;
  /** With how many files were not looked at. */
  readonly interrupted: (left: string) => void;
}

/** Takes the sources one by one, shows how far it is, and tells on stderr what is no plan. */
export async function walkSources(
  sources: readonly PlanSource[],
  { progress, interruption, take, interrupted }: Walk,
): Promise<void> {
  expectMany(sources.length);
  let skipped = 0;
  const noPlans = tellNoPlans(complain);
  for (const [done, source] of sources.entries()) {
    await interruption.listen();
    if (interruption.isAsked()) {
      interrupted(`${String(sources.length - done)} of ${String(sources.length)} files`);
      break;
    }
    progress.show(done);
    const aside = take(source);
    switch (aside?.kind) {
      case 'skipped':
        skipped += 1;
        break;
      case 'not a plan':
        progress.clear();
        noPlans.add(`${source.shown}: not a plan.`);
        break;
      case 'remark':
        progress.clear();
        complain(aside.sentence);
        break;
      case 'elsewhere':
      case undefined:
    }
  }
  progress.clear();
  noPlans.end();
  if (skipped > 0)
    complain(`${String(skipped)} ${skipped === 1 ? 'file' : 'files'} skipped: rule packs or scenarios.`);
}
