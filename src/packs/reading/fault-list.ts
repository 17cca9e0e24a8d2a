import { locate } from '../../plan/locate.ts';
import { nearestWords } from '../../plan/nearest-word.ts';
import type { LocatedNode, Range } from '../../plan/node.ts';
import { placeOf } from '../../plan/source-text.ts';
import type { SourceText } from '../../plan/source-text.ts';
import type { PackFault, PackPlace } from '../pack-fault.ts';

/** Faults listed of one file; a file with more is best begun again from a rule that loads. */
export const mostFaults = 100;

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
    this.#tell(this.placeAt(pointer, onKey), sentence, nearest);
  }

  atRange(range: Range | undefined, sentence: string, nearest: readonly string[] = []): void {
    this.#tell(this.#placeOf(range), sentence, nearest);
  }

  /** Known words nearest to a written one; not looked for any more once the fault would not be listed. */
  nearest(
    word: string,
    known: readonly string[],
    synonyms: Readonly<Record<string, string>> = {},
  ): readonly string[] {
    return this.isFull ? [] : nearestWords(word, known, new Map(Object.entries(synonyms)));
  }

  /** Whether so many faults are found that looking for more is work for nobody. */
  get isFull(): boolean {
    return this.faults.length > mostFaults;
  }

  /** Where a JSON pointer leads in the file; for what is not there, the deepest entry that is. */
  placeAt(pointer: string, onKey = false): PackPlace {
    const located = this.#root === undefined ? undefined : locate(this.#root, pointer);
    return this.#placeOf(onKey ? (located?.key ?? located?.value) : located?.value);
  }

  #placeOf(range: Range | undefined): PackPlace {
    const { line, column } = placeOf(this.#source, range ?? { start: 0, end: 0 });
    return { file: this.#source.path, line, column };
  }

  #tell(place: PackPlace, sentence: string, nearest: readonly string[]): void {
    const hint =
      nearest.length === 0 ? '' : ` Nearest known: ${nearest.map((word) => `\`${word}\``).join(', ')}.`;
    this.faults.push({ ...place, sentence: `${sentence}${hint}`, nearest });
  }
}
