import path from 'node:path';
import type { PlanReport, ReportForm, RunHead, RunTail } from '../../report/plan-report.ts';
import type { TextOptions } from '../../report/forms/text-form.ts';
import { openOutputFile, reasonOf } from '../writing/output-file.ts';
import { overwrittenInput, overwrittenSentence } from '../writing/overwritten-input.ts';
import { reportForm } from './report-forms.ts';
import type { FormName } from './report-forms.ts';
import { writeOut } from '../write-out.ts';

export interface OutputOptions extends TextOptions {
  /** What goes to standard output. */
  readonly format: FormName;
  readonly outputs: readonly OutputWish[];
  /** Replace files that are there. */
  readonly force: boolean;
}

/** `--output FORM=FILE`. */
export interface OutputWish {
  readonly form: FormName;
  readonly file: string;
}

/** All places that a run reports to. A place that fails is told once and left out; the others go on. */
export interface ReportOutputs {
  readonly begin: (head: RunHead) => void;
  readonly plan: (plan: PlanReport) => void;
  readonly end: (tail: RunTail) => void;
  /** Leaves no trace of the files. */
  readonly drop: () => void;
  /** Whether every place took all that it was given. */
  readonly areWhole: () => boolean;
}

export type OpenedOutputs =
  | { readonly ok: true; readonly outputs: ReportOutputs }
  | { readonly ok: false; readonly sentences: readonly string[] };

interface Place {
  readonly form: ReportForm;
  readonly write: (text: string) => string | undefined;
  readonly finish: () => string | undefined;
  readonly drop: () => void;
}

/**
 * Opens every file before anything is judged: a name that cannot be written is told at once, and nothing is left behind. `inputs` are
 * the files that the run reads; none of them is written over.
 */
export function openOutputs(
  options: OutputOptions,
  inputs: readonly string[],
  complain: (line: string) => void,
): OpenedOutputs {
  const files = options.outputs.map(({ file }) => file);
  const twice = namedTwice(options.outputs);
  if (twice !== undefined) return { ok: false, sentences: [`--output: ${twice} is named twice.`] };
  const input = overwrittenInput(files, inputs);
  if (input !== undefined) return { ok: false, sentences: [`--output: ${overwrittenSentence(input)}`] };
  const opened = options.outputs.map((wish) => ({ wish, answer: openOutputFile(wish.file, options.force) }));
  const sentences = opened.flatMap(({ answer }) => (answer.ok ? [] : [`--output: ${answer.sentence}`]));
  if (sentences.length > 0) {
    for (const { answer } of opened) if (answer.ok) answer.file.drop();
    return { ok: false, sentences };
  }
  const plainText: TextOptions = { ...options, colour: false };
  const opens = opened.flatMap(({ wish, answer }): readonly Place[] =>
    answer.ok
      ? [
          {
            form: reportForm(wish.form, plainText),
            write: answer.file.write,
            finish: answer.file.finish,
            drop: answer.file.drop,
          },
        ]
      : [],
  );
  const places = [{ form: reportForm(options.format, options), ...standardOutput }, ...opens];
  return { ok: true, outputs: outputsTo(places, complain) };
}

function outputsTo(places: readonly Place[], complain: (line: string) => void): ReportOutputs {
  let open = places;
  const each = (act: (place: Place) => string | undefined): void => {
    open = open.filter((place) => {
      const fault = act(place);
      if (fault !== undefined) complain(fault);
      return fault === undefined;
    });
  };
  return {
    begin: (head) => {
      each(({ form, write }) => write(form.begin(head)));
    },
    plan: (plan) => {
      each(({ form, write }) => write(form.plan(plan)));
    },
    end: (tail) => {
      each(({ form, write, finish }) => write(form.end(tail)) ?? finish());
    },
    drop: () => {
      for (const { drop } of open) drop();
    },
    areWhole: () => open.length === places.length,
  };
}

const standardOutput = {
  write: (text: string): string | undefined => {
    try {
      if (text === '' || writeOut(text)) return undefined;
      return 'the output cannot be written to its end: who reads it has gone away.';
    } catch (error) {
      return `the output cannot be written to its end (${reasonOf(error)}).`;
    }
  },
  finish: (): undefined => undefined,
  drop: (): undefined => undefined,
} as const;

function namedTwice(wishes: readonly OutputWish[]): string | undefined {
  const met = new Set<string>();
  for (const { file } of wishes) {
    const full = path.resolve(file);
    if (met.has(full)) return file;
    met.add(full);
  }
  return undefined;
}
