import { createHash } from 'node:crypto';
import type { Severity } from '../../judge/finding.ts';
import { annotationsOf } from './annotation.ts';
import type { Annotation } from './annotation.ts';
import type { ReportForm } from '../plan-report.ts';

const severities: Readonly<Record<Severity, string>> = { stop: 'blocker', hold: 'major', note: 'info' };

/** The code quality report of GitLab: a JSON array, one object an annotation. */
export function gitlabForm(): ReportForm {
  let count = 0;
  return {
    begin: () => '[',
    plan: (plan) =>
      annotationsOf(plan)
        .map((one) => `${count++ === 0 ? '' : ','}\n${JSON.stringify(entry(one))}`)
        .join(''),
    end: () => '\n]\n',
  };
}

function entry({ file, place, severity, title, message, rule, fingerprint }: Annotation): object {
  return {
    description: `${title}: ${message.replaceAll('\n', ' ')}`,
    check_name: rule,
    // The host tells entries apart by this alone, also those of two files.
    fingerprint: createHash('sha256')
      .update(JSON.stringify([file, fingerprint]))
      .digest('hex'),
    severity: severities[severity],
    location: { path: file, lines: { begin: place?.line ?? 1, end: place?.endLine ?? 1 } },
  };
}
