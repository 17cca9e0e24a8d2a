import type { Finding } from '../judge/finding.ts';
import type { Key } from './key.ts';
import type { Mark } from './mark.ts';

/** What stops the plan, each told once; and the points for a plan that nothing stops. */
export function markSafety(
  safety: Key['safety'],
  findings: readonly Finding[],
  plansForbidden: boolean,
): readonly Mark[] {
  const stops = findings.filter(({ severity }) => severity === 'stop');
  const of = safety?.points ?? 0;
  if (stops.length === 0)
    return safety === undefined ? [] : [{ category: 'safety', points: plansForbidden ? 0 : of, of }];
  return distinct(stops).map((stop, index): Mark => ({
    category: 'safety',
    ...(stop.partName === undefined ? {} : { part: stop.partName }),
    points: 0,
    of: index === 0 ? of : 0,
    mistake: `stopped by ${stop.rule}`,
    said: `This would be stopped: ${stop.message}`,
    why: stop.why,
    ...(index > 0 || safety?.lookAt === undefined ? {} : { lookAt: safety.lookAt }),
    answer: stop.instead,
  }));
}

/** One of each rule and part: what is said of a part twice is not twice as wrong. */
function distinct(stops: readonly Finding[]): readonly Finding[] {
  const met = new Set<string>();
  return stops.filter(({ rule, part }) => {
    const once = JSON.stringify([rule, part]);
    if (met.has(once)) return false;
    met.add(once);
    return true;
  });
}
