import { locate } from '../plan/locate.ts';
import type { LocatedNode, Range } from '../plan/node.ts';
import { placeOf } from '../plan/source-text.ts';
import type { SourceText } from '../plan/source-text.ts';
import type { PackFault } from './pack-fault.ts';

/** Collects what is wrong in one file of a pack, each fault with its place. */
export class FaultList {
  readonly faults: PackFault[] = [];
  readonly #source: SourceText;
  readonly #root: LocatedNode | undefined;

  constructor(source: SourceText, root: LocatedNode | undefined) {
    this.#source = source;
    this.#root = root;
  }

  /** A fault at a JSON pointer of the file: at the value, or at the key with `onKey`. */
  at(pointer: string, sentence: string, nearest: readonly string[] = [], onKey = false): void {
    const located = this.#root === undefined ? undefined : locate(this.#root, pointer);
    const range = located === undefined ? undefined : onKey ? (located.key ?? located.value) : located.value;
    this.atRange(range, sentence, nearest);
  }

  atRange(range: Range | undefined, sentence: string, nearest: readonly string[] = []): void {
    const { line, column } = placeOf(this.#source, range ?? { start: 0, end: 0 });
    const hint =
      nearest.length === 0 ? '' : ` Nearest known: ${nearest.map((word) => `\`${word}\``).join(', ')}.`;
    this.faults.push({ file: this.#source.path, line, column, sentence: `${sentence}${hint}`, nearest });
  }
}
