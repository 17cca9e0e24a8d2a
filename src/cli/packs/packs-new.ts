import path from 'node:path';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { factSchemaVersion } from '../../generated/fact-names.ts';
import { deriveFacts } from '../../facts/derive-facts.ts';
import { neededProvisions } from '../../judge/needed-provisions.ts';
import type { PackFile } from '../../packs/digest.ts';
import { loadPackFiles } from '../../packs/load-pack.ts';
import { shopScaffold, vehicleScaffold } from '../../packs/writing/scaffold.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { countOf } from '../../report/count-words.ts';
import { visibleText } from '../../report/visible-text.ts';
import { refuse } from '../complain.ts';
import { dictionary } from '../dictionary.ts';
import { faultLine } from '../judging/given-packs.ts';
import { openPlan } from '../judging/judge-source.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { schemaForEditors } from '../schema-for-editors.ts';
import { writeFiles } from './write-files.ts';
import { writeOut } from '../write-out.ts';

export interface NewPackOptions {
  /** The plan whose statements are prepared. */
  readonly from?: string;
  readonly force: boolean;
  readonly asOfDay: number;
}

interface Prepared {
  readonly files: readonly PackFile[];
  readonly remarks: readonly string[];
}

/** The command `packs new`: writes a pack that loads, with `from` the statements that a plan would need; gives the exit status. */
export function newPack(folder: string, options: NewPackOptions): 0 | 2 {
  const name = path.basename(path.resolve(folder));
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/u.test(name)) {
    return refuse([
      `${folder}: the folder is named as the pack, with lower-case letters, digits and single hyphens between them.`,
    ]);
  }
  const schema = schemaForEditors('pack', folder);
  const prepared =
    options.from === undefined
      ? { files: shopScaffold(name, factSchemaVersion, schema), remarks: [] }
      : fromPlan(name, options.from, options.asOfDay, schema);
  if ('refusal' in prepared) return refuse(prepared.refusal);
  // `general` is not to be had twice, and what the plan says may be unfit for a pack.
  const loaded = loadPackFiles({ files: prepared.files, faults: [], isRefused: false }, folder, dictionary);
  if (!loaded.ok) return refuse(loaded.faults.map((fault) => faultLine(fault.sentence, fault)));
  const fault = writeFiles(folder, prepared.files, options.force);
  if (fault !== undefined) return refuse([fault]);
  for (const { name: file } of prepared.files)
    writeOut(visibleText(`Written: ${path.join(folder, file)}`) + '\n');
  for (const remark of prepared.remarks) writeOut(visibleText(remark) + '\n');
  return 0;
}

function fromPlan(
  name: string,
  file: string,
  asOfDay: number,
  schema: string | undefined,
): Prepared | { readonly refusal: readonly string[] } {
  const read = readPlanFile(file);
  if (!read.ok) return { refusal: [`${file}: ${read.fault.sentence}`] };
  // The pack that the plan asks for may be the one to be written.
  const run = judgingRun(builtInPacks(), asOfDay, { passesOverMissing: true });
  const opened = openPlan(run, file, read.bytes, true);
  if (opened.kind !== 'opened') {
    const reasons = opened.kind === 'plan' ? opened.report.notJudged.map(({ sentence }) => sentence) : [];
    return { refusal: reasons.map((sentence) => `${file}: ${sentence}`) };
  }
  const { maker, model, model_year: modelYear } = opened.plan.vehicle;
  if (maker === undefined || model === undefined || modelYear === undefined) {
    return {
      refusal: [`${file}: a pack for its vehicle needs \`maker\`, \`model\` and \`model_year\` in the plan.`],
    };
  }
  const { sheets } = deriveFacts(opened.plan, opened.faults, opened.context);
  const needed = neededProvisions(sheets, opened.rules(), opened.context.stage);
  const { files, written, left } = vehicleScaffold(
    name,
    factSchemaVersion,
    { maker, model, modelYear },
    needed.map(({ toTypeIn, rules }) => ({ text: toTypeIn, rules })),
    schema,
  );
  const remarks = [
    written === 0
      ? 'No statement of the maker would let more of this plan through; only pack.yaml was written.'
      : `${countOf(written, 'statement')} to fill in from the maker’s documents: what each says, and who read it.`,
    ...left.map((text) => `Not prepared, because the plan says too little: ${text}`),
  ];
  return { files, remarks };
}
