import { decodeText } from '../../plan/decode-text.ts';
import type { LocatedNode } from '../../plan/node.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { readYaml } from '../../plan/read-yaml.ts';

/** A plan that planish is to write into. */
export interface EditablePlan {
  readonly file: string;
  readonly bytes: Uint8Array;
  /** Without the byte order mark. */
  readonly text: string;
  readonly root: LocatedNode;
  /** The whole file again, for a text in place of `text`. */
  readonly whole: (text: string) => string;
}

export type EditableReading =
  { readonly ok: true; readonly plan: EditablePlan } | { readonly ok: false; readonly sentence: string };

const byteOrderMark = '\uFEFF';

/** Opens a file for a change. What cannot be written back to the letter is refused. */
export function readEditable(file: string): EditableReading {
  if (file === '-') return refuse('Standard input is no file that could be changed; name the file.');
  const read = readPlanFile(file);
  if (!read.ok) return refuse(`${file}: ${read.fault.sentence}`);
  const decoded = decodeText(read.bytes);
  if (!decoded.ok) return refuse(`${file}: ${decoded.fault.sentence}`);
  const { text } = decoded;
  const bytes = Buffer.from(read.bytes);
  const mark = [byteOrderMark, ''].find((one) => bytes.equals(Buffer.from(`${one}${text}`, 'utf8')));
  if (mark === undefined) return refuse(`${file} is not saved as UTF-8; save it so, and it can be changed.`);
  const yaml = readYaml(text);
  if (!yaml.ok) return refuse(`${file}: ${yaml.faults[0]?.sentence ?? 'It cannot be read.'}`);
  return {
    ok: true,
    plan: { file, bytes: read.bytes, text, root: yaml.root, whole: (changed) => `${mark}${changed}` },
  };
}

function refuse(sentence: string): EditableReading {
  return { ok: false, sentence };
}
