import type { LocatedNode } from './node.ts';
import { yamlText } from './yaml-text.ts';

export interface Signature {
  readonly name: string;
  readonly role: string;
  readonly qualification?: string | undefined;
  /** ISO 8601 calendar date. */
  readonly date: string;
  readonly planRevision?: string | undefined;
  /** Whether to say that no hold is open; left unsaid where permits accept some. */
  readonly noOpenHolds: boolean;
}

export interface SignatureDigests {
  readonly plan: string;
  /** Version of planish, and number of its fact schema, that judged. */
  readonly planish: string;
  readonly facts: number;
  readonly packs: readonly { readonly pack: string; readonly version: string; readonly digest: string }[];
}

/** The lines of a sign-off block, without indentation; `digests` is left out to compute them. */
export function signOffLines(signature: Signature, digests: Partial<SignatureDigests>): readonly string[] {
  const { name, role, qualification, date, planRevision } = signature;
  const person = [
    `name: ${yamlText(name)}`,
    `role: ${yamlText(role)}`,
    ...(qualification === undefined ? [] : [`qualification: ${yamlText(qualification)}`]),
  ];
  return [
    'sign_off:',
    `  by: { ${person.join(', ')} }`,
    `  date: ${date}`,
    ...(planRevision === undefined ? [] : [`  plan_revision: ${yamlText(planRevision)}`]),
    ...(signature.noOpenHolds ? ['  open_holds: none'] : []),
    '  digests:',
    ...(digests.plan === undefined ? [] : [`    plan: ${digests.plan}`]),
    ...(digests.planish === undefined ? [] : [`    planish: ${yamlText(digests.planish)}`]),
    ...(digests.facts === undefined ? [] : [`    facts: ${String(digests.facts)}`]),
    '    packs:',
    ...(digests.packs ?? []).map(
      ({ pack, version, digest }) =>
        `      - { pack: ${yamlText(pack)}, version: ${yamlText(version)}, digest: ${yamlText(digest)} }`,
    ),
  ];
}

/**
 * The text of a plan with a sign-off block in place of the one it has, or at its end; everything else stays as it is to the
 * letter. Undefined where the plan's own form has no place for lines (one that is written in braces). Whether the result
 * reads back as meant is for the caller to look.
 */
export function withSignOff(text: string, root: LocatedNode, lines: readonly string[]): string | undefined {
  if (root.kind !== 'map') return undefined;
  const [first] = root.entries.values();
  const indent = first === undefined ? undefined : indentAt(text, first.keyRange.start);
  if (indent === undefined) return undefined;
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const block = lines.map((line) => `${indent}${line}${lineEnd}`).join('');
  const old = root.entries.get('sign_off');
  if (old === undefined) {
    const gap = text === '' || text.endsWith('\n') ? '' : lineEnd;
    return `${text}${gap}${block}`;
  }
  if (indentAt(text, old.keyRange.start) === undefined) return undefined;
  const start = old.keyRange.start - indent.length;
  const feed = text.indexOf('\n', Math.max(old.value.range.end - 1, old.keyRange.end));
  return `${text.slice(0, start)}${block}${feed === -1 ? '' : text.slice(feed + 1)}`;
}

/** The blanks before a place that begins its line; undefined where something else stands before it. */
function indentAt(text: string, offset: number): string | undefined {
  const before = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  return /^ *$/u.test(before) ? before : undefined;
}
