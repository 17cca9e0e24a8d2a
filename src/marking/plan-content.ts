import type { Plan } from '../generated/plan-types.ts';

/** A text that is the same for plans that say the same: keys in order, without comments, and without who wrote it and when. */
export function planContent(plan: Plan): string {
  const { job: _job, sign_off: _signature, ...rest } = plan;
  return JSON.stringify(sorted(rest));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.entries(value)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, one]) => [key, sorted(one)]);
}
