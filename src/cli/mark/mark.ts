import path from 'node:path';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { markCsv } from '../../marking/mark-csv.ts';
import { markHtml } from '../../marking/mark-html.ts';
import { markJson } from '../../marking/mark-json.ts';
import { markText } from '../../marking/mark-text.ts';
import type { MarkReport } from '../../marking/mark-report.ts';
import { markSubmissions } from '../../marking/mark-submissions.ts';
import { readKey } from '../../marking/read-key.ts';
import type { StudentNumber } from '../../marking/student-numbers.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { countOf } from '../../report/count-words.ts';
import { csv } from '../../report/csv.ts';
import { visibleText } from '../../report/visible-text.ts';
import { loadGivenPacks } from '../judging/given-packs.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { overwrittenInput, overwrittenSentence } from '../writing/overwritten-input.ts';
import { submissionsFrom } from './submissions.ts';
import { version } from '../version.ts';
import { writeNewFiles } from '../writing/write-new-files.ts';
import { writeOut } from '../write-out.ts';
import { complain, refuse } from '../complain.ts';

export type MarkForm = 'text' | 'json' | 'csv' | 'html';

export interface MarkOptions {
  readonly key: string;
  readonly format: MarkForm;
  /** File that the marks go to, in place of standard output. */
  readonly output?: string;
  /** File that says which number is whose; the marks then have numbers in place of names. */
  readonly numbers?: string;
  readonly force: boolean;
  readonly reveal: boolean;
  readonly rules: readonly string[];
  /** The day of the run, for a key that gives none. */
  readonly today: number;
  readonly colour: boolean;
  readonly columns: number;
}

/** The command `mark`: holds students' plans against a key. Gives 0, or 2 when something could not be marked. */
export function mark(args: readonly string[], options: MarkOptions): 0 | 2 {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const packs = [...builtInPacks(), ...given.packs];
  const resolved = resolvePacks(packs, undefined);
  if (!resolved.ok) return refuse([resolved.sentence]);
  const topics = new Map(
    resolved.packs.layers.flatMap(({ rules }) => rules.map(({ id, topic }) => [id, topic])),
  );
  const file = readPlanFile(options.key);
  if (!file.ok) return refuse([`${options.key}: ${file.fault.sentence}`]);
  const read = readKey(options.key, file.bytes, new Set(topics.values()));
  if (!read.ok)
    return refuse(
      read.faults.map(
        ({ file: at, line, column, sentence }) =>
          `${at}, line ${String(line)}, column ${String(column)}: ${sentence}`,
      ),
    );
  const { key } = read;
  const asOfDay = key.scenario.asOfDay ?? options.today;
  const run = judgingRun(packs, asOfDay, { stage: key.scenario.stage });
  const handedIn = submissionsFrom(args, run, topics);
  if (!handedIn.ok) return refuse(handedIn.sentences);
  const toWrite = [options.output, options.numbers].filter((name) => name !== undefined);
  if (new Set(toWrite.map((name) => path.resolve(name))).size < toWrite.length)
    return refuse([`${options.output ?? ''} is named twice, by -o and by --numbers.`]);
  const input = overwrittenInput(toWrite, [options.key, ...handedIn.files]);
  if (input !== undefined) return refuse([overwrittenSentence(input)]);
  const marked = markSubmissions(key, handedIn.plans, {
    reveal: options.reveal,
    withNumbers: options.numbers !== undefined,
  });
  const report: MarkReport = {
    planish: version,
    packs: resolved.packs.layers.map(({ name, version: packVersion }) => `${name} ${packVersion}`),
    scenario: {
      id: key.scenario.id,
      ...(key.scenario.title === undefined ? {} : { title: key.scenario.title }),
    },
    asOf: formatDay(asOfDay),
    stage: key.scenario.stage,
    passShare: key.passShare,
    of: marked.of,
    students: marked.students,
    class: marked.class,
    leftOut: handedIn.leftOut,
  };
  const fault = write(written(report, options), marked.numbers, options);
  if (fault !== undefined) return refuse([fault]);
  if (options.output !== undefined && options.output !== '-')
    writeOut(`${visibleText(`${options.output}: written. ${classWords(report)}`)}\n`);
  for (const line of handedIn.leftOut) complain(line);
  const { notPlans } = handedIn;
  if (notPlans > 0) complain(`${String(notPlans)} ${notPlans === 1 ? 'file is' : 'files are'} no plan.`);
  return handedIn.leftOut.length > 0 || report.class.notMarked > 0 ? 2 : 0;
}

/** How the class did, for somebody who does not see the marks themselves. */
function classWords({ students, class: { passed, notMarked } }: MarkReport): string {
  const unmarked = students.filter(({ marks }) => !marks.judged).map(({ marks }) => marks.name);
  const rest = notMarked === 0 ? '' : ` Could not be marked: ${unmarked.join(', ')}.`;
  return `${countOf(students.length, 'plan')}, ${String(passed)} passed.${rest}`;
}

function written(report: MarkReport, { format, colour, columns, output }: MarkOptions): string {
  switch (format) {
    case 'text':
      return markText(report, { colour: colour && output === undefined, columns });
    case 'json':
      return markJson(report);
    case 'csv':
      return markCsv(report);
    case 'html':
      return markHtml(report);
  }
}

/** Both files or none: marks with numbers help nobody who does not know whose they are. */
function write(
  text: string,
  names: readonly StudentNumber[],
  { output, numbers, force }: MarkOptions,
): string | undefined {
  const rows = [['number', 'name'], ...names.map(({ called, name }) => [called, name])];
  const toFile = output !== undefined && output !== '-';
  const fault = writeNewFiles(
    [
      ...(numbers === undefined ? [] : [{ file: numbers, text: csv(rows) }]),
      ...(toFile ? [{ file: path.normalize(output), text }] : []),
    ],
    force,
  );
  if (fault === undefined && !toFile) writeOut(text);
  return fault;
}
