import { annotationsOf } from './annotation.ts';
import type { Annotation } from './annotation.ts';
import type { ReportForm } from '../plan-report.ts';

/** Logging commands of Azure Pipelines, one line an annotation. The host knows errors and warnings only. */
export function azureForm(): ReportForm {
  return {
    begin: () => '',
    plan: (plan) => annotationsOf(plan).map(line).join(''),
    end: () => '',
  };
}

function line({ file, place, severity, title, message, rule }: Annotation): string {
  const properties = [
    `type=${severity === 'stop' ? 'error' : 'warning'}`,
    `sourcepath=${property(file)}`,
    ...(place === undefined
      ? []
      : [`linenumber=${String(place.line)}`, `columnnumber=${String(place.column)}`]),
    `code=${property(rule)}`,
  ];
  return `##vso[task.logissue ${properties.join(';')}]${data(`${title}: ${message}`)}\n`;
}

function data(text: string): string {
  return text.replaceAll('%', '%AZP25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return data(text).replaceAll(']', '%5D').replaceAll(';', '%3B');
}
