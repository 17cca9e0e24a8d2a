import path from 'node:path';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { draftText } from '../../draft/draft-text.ts';
import { readAnswers } from '../../draft/read-answers.ts';
import type { AnswersReading, DraftAnswers } from '../../draft/read-answers.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { decodeText } from '../../plan/decode-text.ts';
import type { Asker } from '../ask.ts';
import { complain, refuse } from '../complain.ts';
import { askedAnswers, typedAnswers } from './draft-answers.ts';
import type { TypedAnswers } from './draft-answers.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { whyNotWritable } from '../writing/output-file.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';
import { schemaForEditors } from '../schema-for-editors.ts';
import { writeNewFile } from '../writing/write-new-file.ts';
import { writeOut } from '../write-out.ts';

export interface DraftOptions {
  readonly typed: TypedAnswers;
  /** Answers come as JSON on standard input. */
  readonly fromInput: boolean;
  /** Asks for what is not answered; left out where nobody can be asked. */
  readonly asker?: () => Asker;
  readonly rules: readonly string[];
  readonly output?: string;
  readonly force: boolean;
}

/** The command `draft`: writes the beginning of a plan, with a question behind all that is open. */
export async function draft(options: DraftOptions): Promise<0 | 2> {
  const { output, fromInput, force, typed } = options;
  if (fromInput && (typed.byOption.size > 0 || typed.parts.length > 0))
    return refuse(['Answers come from standard input or from options, not from both.']);
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  // Told before anybody answers questions; nothing is left lying about while they do.
  const unfit = output === undefined ? undefined : whyNotWritable(output, force);
  if (unfit !== undefined) return refuse([unfit]);
  const reading = await answersOf(options);
  if (reading === undefined)
    return refuse(['The answers ended before the questions did; nothing was written.']);
  if (!reading.ok) return refuse(reading.sentences);
  const resolved = resolvePacks([...builtInPacks(), ...given.packs], undefined, vehicleOf(reading.answers));
  if (!resolved.ok) return refuse([faultLine(resolved.sentence, resolved.place)]);
  const { layers, makers } = resolved.packs;
  const text = draftText(reading.answers, {
    makers,
    pins: layers.map(({ name, version }) => `${name}@${majorOf(version)}`),
    schema: schemaForEditors('plan', output === undefined ? '.' : path.dirname(output)),
  });
  if (output === undefined) {
    writeOut(text);
    return 0;
  }
  const sentence = writeNewFile(output, text, force);
  if (sentence !== undefined) return refuse([sentence]);
  complain(`Written to ${output}; questions open in it: ${String(text.split('# ?').length - 2)}.`);
  return 0;
}

async function answersOf({ fromInput, typed, asker }: DraftOptions): Promise<AnswersReading | undefined> {
  if (fromInput) {
    const input = readStandardInput();
    if (!input.ok) return { ok: false, sentences: [input.fault.sentence] };
    const decoded = decodeText(input.bytes);
    return decoded.ok ? readAnswers(decoded.text, true) : { ok: false, sentences: [decoded.fault.sentence] };
  }
  // What was given wrong is told before anything is asked.
  const before = typedAnswers(typed);
  if (!before.ok || asker === undefined) return before;
  const terminal = asker();
  const asked = await askedAnswers(typed, terminal);
  terminal.close();
  return asked === undefined ? undefined : typedAnswers(asked);
}

function vehicleOf({ vehicle }: DraftAnswers): Parameters<typeof resolvePacks>[2] {
  const { maker, model, body, model_year: modelYear, vin, market } = vehicle;
  return { maker, model, body, modelYear, vin, market };
}

function majorOf(version: string): string {
  return version.split('.', 1)[0] ?? version;
}
