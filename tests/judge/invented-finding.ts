import type { Finding } from '../../src/judge/finding.ts';

export function finding(given: Partial<Finding> & Pick<Finding, 'rule' | 'severity'>): Finding {
  return {
    pack: 'invented',
    pointer: '',
    message: 'found',
    instead: 'do otherwise',
    why: 'because',
    source: 'common practice',
    facts: [],
    assumptions: [],
    asksUnknown: false,
    standsForStop: false,
    fingerprint: '0',
    ...given,
  };
}
