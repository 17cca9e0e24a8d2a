import type { MakerEntry, MakerStatements } from '../facts/context.ts';
import { whereItSays } from '../facts/papers/maker-applies.ts';
import { yamlText } from '../plan/yaml-text.ts';
import { draftParts } from './draft-parts.ts';
import type { DraftPart } from './draft-parts.ts';
import { statementWords } from './pack-knowledge.ts';
import type { Known } from './pack-knowledge.ts';
import { draftQuestions, wordsAt } from './questions.ts';
import type { DraftAnswers } from './read-answers.ts';

export interface DraftSources {
  readonly makers: readonly MakerStatements[];
  /** Packs that the plan is to be judged by: `general@2`. */
  readonly pins: readonly string[];
  /** Where an editor finds the schema of plans; without it no line for editors is written. */
  readonly schema?: string | undefined;
}

/**
 * The text of a new plan: what its author has answered, what vehicle packs state for this vehicle, and a question (`# ?`) behind
 * every key that is open. It proposes no work, so that a check always holds it; the operations are for a person to write.
 */
export function draftText(answers: DraftAnswers, { makers, pins, schema }: DraftSources): string {
  const parts = draftParts(answers, makers);
  const lines = [
    ...(schema === undefined ? [] : [`# yaml-language-server: $schema=${oneLine(schema)}`]),
    '# A draft: `# ?` asks. A key with nothing behind it counts as left out, and no work is proposed yet.',
    'format: 1',
    'stage: draft',
    ...(pins.length === 0 ? [] : [`rules: [${pins.map(yamlText).join(', ')}]`]),
    '',
    ...blockLines('job', answers),
    '',
    ...blockLines('vehicle', answers),
    '',
    ...referenceLines(parts),
    '',
    'parts:',
    ...(parts.length === 0 ? emptyPart : parts.flatMap(partLines)),
  ];
  return `${lines.join('\n')}\n`;
}

/** A block of answers and open questions, in the order in which they are asked; what was answered unasked comes behind. */
function blockLines(block: 'job' | 'vehicle', answers: DraftAnswers): readonly string[] {
  const given: unknown = answers[block];
  const asked = draftQuestions.filter(({ path }) => path[0] === block);
  const lines = [`${block}:`];
  for (const { path, question, hint } of asked) {
    const keys = path.slice(1);
    const parent = keys.slice(0, -1).join('.');
    const line = `${'  '.repeat(keys.length - 1)}  ${keys.at(-1) ?? ''}:`;
    if (parent !== '' && !lines.includes(`  ${parent}:`)) lines.push(`  ${parent}:`);
    const value = valueAt(given, keys);
    lines.push(value === undefined ? open(line, hint ?? wordsAt(path) ?? question) : `${line} ${value}`);
    if (parent !== '') lines.push(...unasked(valueOf(given, parent), asked, [block, parent]));
  }
  lines.push(...unasked(given, asked, [block]));
  return [...new Set(lines)];
}

function unasked(
  given: unknown,
  asked: readonly { readonly path: readonly string[] }[],
  path: readonly string[],
): readonly string[] {
  if (typeof given !== 'object' || given === null) return [];
  const isAsked = (key: string): boolean =>
    asked.some((one) => [...path, key].every((step, index) => one.path[index] === step));
  return Object.keys(given)
    .filter((key) => !isAsked(key))
    .flatMap((key) => {
      const value = valueAt(given, [key]);
      return value === undefined ? [] : [`${'  '.repeat(path.length)}${key}: ${value}`];
    });
}

function referenceLines(parts: readonly DraftPart[]): readonly string[] {
  const documents = new Map<string, Known<MakerEntry>>();
  for (const { material, inDoubt, work } of parts) {
    for (const known of [...work, ...(material === undefined ? [] : [material]), ...inDoubt])
      if (!documents.has(known.entry.document)) documents.set(known.entry.document, known);
  }
  if (documents.size === 0)
    return [
      'references: # ? the maker’s procedures for this model, body and year, each looked up for this job',
    ];
  return ['references:', ...[...documents.values()].flatMap(documentLines)];
}

/** Only its number is taken over: revision, title and coverage are what the page says on the day it is looked up. */
function documentLines({ pack, entry }: Known<MakerEntry>): readonly string[] {
  const { revision, published } = entry;
  const knownAs = [
    ...(revision === undefined ? [] : [`revision ${revision}`]),
    ...(published === undefined ? [] : [`published ${published}`]),
  ].join(', ');
  return [
    `  - id: ${yamlText(entry.document)} # named by pack ${oneLine(pack)}${knownAs === '' ? '' : ` as ${oneLine(knownAs)}`}`,
    open('    kind:', 'maker procedure, maker bulletin, maker manual …'),
    open('    title:', 'as on the page'),
    `    document: ${yamlText(entry.document)}`,
    open('    revision:', 'as on the page; not from the pack'),
    open('    published:', 'as on the page'),
    open('    covers:', '{ maker: …, model: …, bodies: […], years: … }, as the document says'),
    open('    looked_up:', 'day on which it was looked up for this job'),
  ];
}

function partLines({ id, part, material, inDoubt, work, under, over }: DraftPart): readonly string[] {
  const { name, kind, side, damage } = part;
  const said = material?.entry;
  const from = material === undefined ? '' : ` # ${oneLine(whereItSays(material.entry, material.pack))}`;
  const grade = said?.grade ?? undefined;
  return [
    `  - id: ${yamlText(id)}`,
    name === undefined ? open('    name:', 'what the shop calls it') : `    name: ${yamlText(name)}`,
    kind === undefined ? open('    kind:', 'what it is') : `    kind: ${yamlText(kind)}`,
    side === undefined ? open('    side:', 'left, right, both, centre') : `    side: ${side}`,
    ...(said?.onePiece === undefined ? [] : [`    one_piece: ${String(said.onePiece)}${from}`]),
    ...layerLines('under', under, 'layer that hides it'),
    ...layerLines('over', over, 'layer that it hides, once looked under'),
    ...inDoubt.map(
      (known) =>
        `    # ? ${oneLine(materialWords(known))} (${oneLine(whereItSays(known.entry, known.pack))})`,
    ),
    grade === undefined
      ? open('    grade:', 'material, as the maker writes it')
      : `    grade: ${yamlText(grade)}${from}`,
    ...(said?.tensileMpa === undefined ? [] : [`    strength: ${String(said.tensileMpa)} MPa${from}`]),
    ...(said?.class === undefined ? [] : [`    class: ${yamlText(said.class)}${from}`]),
    said === undefined
      ? open('    grade_from:', '{ reference: …, at: … }')
      : `    grade_from: { reference: ${yamlText(said.document)}${said.page === undefined ? '' : `, at: ${yamlText(said.page)}`} }`,
    said?.thicknessMm === undefined
      ? open('    thickness:', 'with its unit')
      : `    thickness: ${String(said.thicknessMm)} mm${from}`,
    '    damage:',
    damage?.kind === undefined
      ? open('      kind: not yet seen', wordsAt(['parts', '0', 'damage', 'kind']) ?? 'what is wrong with it')
      : `      kind: ${yamlText(damage.kind)}`,
    damage?.found_by === undefined
      ? open('      found_by:', wordsAt(['parts', '0', 'damage', 'found_by']) ?? 'how it was looked at')
      : `      found_by: ${yamlText(damage.found_by)}`,
    ...(damage?.extent === undefined ? [] : [`      extent: ${yamlText(damage.extent)}`]),
    ...work.map(
      ({ entry, pack, isSure }) =>
        `    # ${isSure ? '' : '? if it is for this vehicle and side: '}${oneLine(statementWords(entry))} (${oneLine(whereItSays(entry, pack))})`,
    ),
    open('    operations:', 'what is to be done, by which page of which document'),
  ];
}

const emptyPart = [
  '  - id: part',
  open('    kind:', 'what it is'),
  open('    operations:', 'what is to be done'),
];

function layerLines(key: string, ids: readonly string[], question: string): readonly string[] {
  const [only, ...others] = ids;
  if (only === undefined) return [open(`    ${key}:`, question)];
  return [`    ${key}: ${others.length === 0 ? yamlText(only) : `[${ids.map(yamlText).join(', ')}]`}`];
}

function materialWords({
  entry,
}: Known<MakerEntry & { grade?: string; thicknessMm?: number; class?: string }>): string {
  const { grade, thicknessMm, vins, sides, bodies, years } = entry;
  const what = [grade ?? entry.class, thicknessMm === undefined ? undefined : `${String(thicknessMm)} mm`];
  const where = [
    years.from === years.to
      ? `model year ${String(years.from)}`
      : `model years ${String(years.from)} to ${String(years.to)}`,
    ...(bodies === undefined ? [] : [bodies.join(' or ')]),
    ...(sides === undefined ? [] : [sides.join(' or ')]),
    ...(vins === undefined ? [] : [`numbers ${vins.from} to ${vins.to}`]),
  ];
  return `${what.filter((word) => word !== undefined).join(', ')} for ${where.join(', ')}`;
}

function open(line: string, question: string): string {
  return `${line} # ? ${oneLine(question)}`;
}

/** A remark ends with its line, whatever a pack or a path holds. */
function oneLine(text: string): string {
  return text.replace(/[\s\p{C}]+/gu, ' ').trim();
}

/** A value as YAML; undefined where none is given. Lists are of plain words here. */
function valueAt(given: unknown, keys: readonly string[]): string | undefined {
  let value = given;
  for (const key of keys) value = valueOf(value, key);
  if (Array.isArray(value)) return `[${value.map((one) => yamlText(String(one))).join(', ')}]`;
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  return typeof value === 'string' ? yamlText(value) : undefined;
}

function valueOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? Reflect.get(value, key)
    : undefined;
}
