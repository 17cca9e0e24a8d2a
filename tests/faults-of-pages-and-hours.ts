import type { Fault } from './fault.ts';
import { heatedAndPulled } from './faults-of-the-outside-read.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { rail } from './one-change.ts';
import type { Change } from './one-change.ts';

/** The heat and the pull in it, with their hours. */
export const heatedAndPulledAt = (heated: string, pulled: string): readonly Change[] => [
  ...heatedAndPulled,
  ['do: heat\n', `do: heat\n        done: ${heated}\n`],
  ['do: straighten, step: 11,', `do: straighten, step: 11, done: ${pulled},`],
];

/** The page of the rail for vehicles of some build dates alone; this one was built on a day of April 2023. */
export const built = (range: string): readonly Change[] => [
  ['  model_year: 2023\n', '  model_year: 2023\n  build_date: 2023-04-18\n'],
  ['years: 2022-2024 }, looked_up', `years: 2022-2024, built: { ${range} } }, looked_up`],
];

/** Pages that are of another vehicle or another matter, and hours that do not fit. Common practice. */
export const faultsOfPagesAndHours: readonly Fault[] = [
  ...['to: 2023-04-17', 'from: 2023-04-19'].map((range): Fault => ({
    severity: 'stop',
    name: `the page is for other build dates: ${range}`,
    plan: wholeJob,
    changes: built(range),
    rule: 'vehicle-outside-cited-range',
    on: '- to: apron-l',
  })),
  {
    severity: 'hold',
    name: 'heated in the morning, pulled "with heat" in the afternoon',
    plan: rail,
    changes: heatedAndPulledAt('2026-10-21T10:00', '2026-10-21T14:00'),
    rule: 'pulled-after-the-heat',
    on: 'do: straighten, step: 11',
  },
];
