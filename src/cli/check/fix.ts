import { looksSigned } from '../../plan/looks-signed.ts';
import { mendKeys } from '../../plan/mend-keys.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { mendedText } from '../../report/mended-text.ts';
import { visibleText } from '../../report/visible-text.ts';
import { askAtTerminal } from '../ask.ts';
import { complain } from '../complain.ts';
import { readEditable } from '../sign/editable-plan.ts';
import { findPlans } from '../plans/find-plans.ts';
import { isPlan } from '../judging/judge-source.ts';
import { replaceFile } from '../sign/replace-file.ts';
import { writeOut } from '../write-out.ts';

export interface FixOptions {
  /** Write without a question. */
  readonly yes: boolean;
  /** Whether somebody can be asked. */
  readonly isTerminal: boolean;
  readonly columns: number;
}

interface Mending {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly text: string;
}

/**
 * `check --fix`: shows which keys would be mended, asks, and writes. All of it goes to standard error: the report
 * that follows has standard output to itself. False when a file that was to be mended could not be.
 */
export async function fix(args: readonly string[], options: FixOptions): Promise<boolean> {
  if (args.includes('-')) {
    complain('--fix writes into files, and standard input is none; name the file.');
    return false;
  }
  const found = mendings(args, options.columns);
  if (found.toMend.length === 0) {
    if (!found.isRefused) complain('No key needs mending that planish is sure of.');
    return !found.isRefused;
  }
  if (!(options.yes || (await isAgreed(found.toMend.length, options.isTerminal)))) return !found.isRefused;
  const sentences = found.toMend.map(({ file, bytes, text }) => replaceFile(file, bytes, text));
  for (const sentence of sentences) if (sentence !== undefined) complain(sentence);
  return !found.isRefused && sentences.every((sentence) => sentence === undefined);
}

function mendings(
  args: readonly string[],
  columns: number,
): { readonly toMend: readonly Mending[]; readonly isRefused: boolean } {
  const toMend: Mending[] = [];
  let isRefused = false;
  for (const source of findPlans(args, process.cwd())) {
    if (source.kind !== 'file') continue;
    // What cannot be read is told by the check that follows.
    if (!readPlanFile(source.path).ok) continue;
    const reading = readEditable(source.path);
    if (!reading.ok) continue;
    const { plan } = reading;
    if (!source.named && !isPlan(plan.root)) continue;
    const mended = mendKeys(plan.text);
    if (mended === undefined || mended.keys === 0) continue;
    if (looksSigned(plan.root)) {
      complain(
        `${source.shown} bears a signature, and is left as it is: who signed has seen these keys. Take it out, mend, and sign again.`,
      );
      isRefused = true;
      continue;
    }
    writeOut(
      mendedText({ file: source.shown, keys: mended.keys }, plan.text, mended.text, columns),
      'complaints',
    );
    toMend.push({ file: source.shown, bytes: plan.bytes, text: plan.whole(mended.text) });
  }
  return { toMend, isRefused };
}

async function isAgreed(files: number, isTerminal: boolean): Promise<boolean> {
  const what = files === 1 ? 'this file' : `these ${String(files)} files`;
  if (!isTerminal) {
    complain(`Nothing was written: nobody can be asked here. --yes writes ${what}.`);
    return false;
  }
  const asker = askAtTerminal();
  const answer = await asker.ask(visibleText(`Write ${what}? (yes or no) `));
  asker.close();
  if (/^y(?:es)?$/iu.test(answer ?? '')) return true;
  complain('Nothing was written.');
  return false;
}
