import { azureForm } from '../../report/forms/azure-form.ts';
import { csvForm } from '../../report/forms/csv-form.ts';
import { githubForm } from '../../report/forms/github-form.ts';
import { gitlabForm } from '../../report/forms/gitlab-form.ts';
import { jsonForm } from '../../report/forms/json-form.ts';
import { junitForm } from '../../report/forms/junit-form.ts';
import { markdownForm } from '../../report/forms/markdown-form.ts';
import { ndjsonForm } from '../../report/forms/ndjson-form.ts';
import type { ReportForm } from '../../report/plan-report.ts';
import { sarifForm } from '../../report/forms/sarif-form.ts';
import { textForm } from '../../report/forms/text-form.ts';
import type { TextOptions } from '../../report/forms/text-form.ts';

/** The forms of the report of plans, by the words of `--format` and `--output`; none is made before it is asked for. */
const makers = {
  text: (options: TextOptions) => textForm(options),
  json: () => jsonForm(),
  ndjson: () => ndjsonForm(),
  csv: () => csvForm(),
  sarif: () => sarifForm(),
  junit: () => junitForm(),
  markdown: (options: TextOptions) => markdownForm(options),
  github: () => githubForm(),
  gitlab: () => gitlabForm(),
  azure: () => azureForm(),
} as const;

export type FormName = keyof typeof makers;

export const formNames: readonly FormName[] = [
  ...(['text', 'json', 'ndjson', 'csv', 'sarif', 'junit', 'markdown'] as const),
  ...(['github', 'gitlab', 'azure'] as const),
];

export function isFormName(word: string): word is FormName {
  return formNames.some((name) => name === word);
}

export function reportForm(name: FormName, options: TextOptions): ReportForm {
  return makers[name](options);
}
