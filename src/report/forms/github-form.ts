import type { Severity } from '../../judge/finding.ts';
import { annotationsOf } from './annotation.ts';
import type { Annotation } from './annotation.ts';
import type { ReportForm } from '../plan-report.ts';

const commands: Readonly<Record<Severity, string>> = { stop: 'error', hold: 'warning', note: 'notice' };

/** Workflow commands of GitHub Actions, one line an annotation. The host shows ten of each kind a step, so worst come first. */
export function githubForm(): ReportForm {
  return {
    begin: () => '',
    plan: (plan) => annotationsOf(plan).map(line).join(''),
    end: () => '',
  };
}

function line({ file, place, severity, title, message }: Annotation): string {
  const properties = [
    `file=${property(file)}`,
    ...(place === undefined
      ? []
      : [
          `line=${String(place.line)}`,
          `endLine=${String(place.endLine)}`,
          // The host takes columns only where both are on one line.
          ...(place.line === place.endLine
            ? [`col=${String(place.column)}`, `endColumn=${String(place.endColumn)}`]
            : []),
        ]),
    `title=${property(title)}`,
  ];
  return `::${commands[severity]} ${properties.join(',')}::${data(message)}\n`;
}

function data(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
