import path from 'node:path';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { factSchemaVersion } from '../../generated/fact-names.ts';
import { nodeAt } from '../../plan/node-at.ts';
import { canonicalPlan } from '../../plan/plan-canonical.ts';
import { formatDay } from '../../quantity/format-day.ts';
import type { PlanReport } from '../../report/plan-report.ts';
import { signedText } from '../../report/signed-text.ts';
import { textForm } from '../../report/forms/text-form.ts';
import { complain, refuse } from '../complain.ts';
import { readEditable } from './editable-plan.ts';
import { loadGivenPacks } from '../judging/given-packs.ts';
import { judgeSource } from '../judging/judge-source.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { lockFinder } from '../judging/lock-finder.ts';
import { replaceFile } from './replace-file.ts';
import { signPlan } from './sign-plan.ts';
import { version } from '../version.ts';
import { writeOut } from '../write-out.ts';

export interface SignOptions {
  readonly by?: string;
  readonly role?: string;
  readonly qualification?: string;
  /** Days since 1970-01-01, both. */
  readonly signedOnDay: number;
  readonly asOfDay: number;
  readonly rules: readonly string[];
  readonly locked: boolean;
  /** Replace a signature. */
  readonly again: boolean;
  readonly colour: boolean;
  readonly columns: number;
}

/** The command `sign`: judges a plan as it would stand signed, writes the signature only where that is cleared. */
export function sign(file: string, options: SignOptions): 0 | 1 | 2 {
  const { by, role, signedOnDay, asOfDay } = options;
  if (by === undefined || role === undefined || isBlankText(by) || isBlankText(role))
    return refuse(['Who signs, and in which role? Give --by NAME and --role ROLE.']);
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const reading = readEditable(file);
  if (!reading.ok) return refuse([reading.sentence]);
  const { plan } = reading;
  const old = nodeAt(plan.root, ['sign_off']);
  const isBlank = old === undefined || (old.kind === 'scalar' && old.value === null);
  if (!isBlank && !options.again)
    return refuse([`${file} bears a signature already; --again puts this one in its place.`]);

  const run = judgingRun([...builtInPacks(), ...given.packs], asOfDay, {
    lockFor: lockFinder(),
    mustBeLocked: options.locked,
  });
  const signature = { name: by, role, qualification: options.qualification, date: formatDay(signedOnDay) };
  const outcome = signPlan(plan, signature, { planish: version, facts: factSchemaVersion }, (text) => {
    const bytes = Buffer.from(plan.whole(text), 'utf8');
    const answer = judgeSource(run, file, bytes, true, path.dirname(file));
    if (answer.kind !== 'plan') throw new Error('a named file is always judged');
    return answer.report;
  });
  switch (outcome.kind) {
    case 'no place':
      return refuse([`${file}: ${outcome.sentence}`]);
    case 'open':
      writeOut(reportText(outcome.report, options));
      complain(`${file} is not signed. ${whatIsOpen(outcome.report)} Nothing was written.`);
      return outcome.report.verdict === 'not judged' ? 2 : 1;
    case 'signed': {
      const sentence = replaceFile(file, plan.bytes, plan.whole(outcome.text));
      if (sentence !== undefined) return refuse([sentence]);
      writeOut(signedText({ file, asOf: formatDay(asOfDay), ...outcome }, options.columns));
      return 0;
    }
  }
}

/** Blanks, and signs that nobody sees, name nobody. */
function isBlankText(text: string): boolean {
  return !/[\p{L}\p{N}]/u.test(text);
}

/** `sign --canonical`: what the digest is the SHA-256 of. */
export function canonical(file: string): 0 | 2 {
  const reading = readEditable(file);
  if (!reading.ok) return refuse([reading.sentence]);
  writeOut(canonicalPlan(reading.plan.root));
  return 0;
}

function reportText(report: PlanReport, { colour, columns, asOfDay }: SignOptions): string {
  const form = textForm({ colour, columns, quiet: false, summary: false, mostFindings: Infinity });
  return [
    form.begin({
      planish: version,
      packs: report.packs ?? [],
      factSchema: factSchemaVersion,
      asOf: formatDay(asOfDay),
    }),
    form.plan(report),
  ].join('');
}

function whatIsOpen({ verdict, counts }: PlanReport): string {
  if (verdict === 'not judged') return 'It could not be judged.';
  const open = [counted(counts.stop, 'stop'), counted(counts.hold - counts.accepted, 'hold')];
  return `As it would stand signed, it has ${open.join(' and ')} open.`;
}

function counted(count: number, word: string): string {
  return `${count === 0 ? 'no' : String(count)} ${word}${count === 1 ? '' : 's'}`;
}
