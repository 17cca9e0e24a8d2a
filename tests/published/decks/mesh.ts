export type Place = readonly [x: number, y: number, z: number];

interface Element {
  readonly nodes: readonly number[];
  readonly material: string;
  readonly middle: Place;
}

/** Eight-node bricks in blocks that share the nodes where they touch. Numbers of nodes and elements count from 1. */
export class Mesh {
  readonly nodes: Place[] = [];
  readonly elements: Element[] = [];
  readonly #numbers = new Map<string, number>();

  /** Answers the numbers of the block's elements. */
  block(
    xs: readonly number[],
    ys: readonly number[],
    zs: readonly number[],
    material: string,
  ): readonly number[] {
    const made: number[] = [];
    for (const [x0, x1] of pairs(xs)) {
      for (const [y0, y1] of pairs(ys)) {
        for (const [z0, z1] of pairs(zs)) {
          const ring = (z: number): number[] => [
            this.#make(x0, y0, z),
            this.#make(x1, y0, z),
            this.#make(x1, y1, z),
            this.#make(x0, y1, z),
          ];
          const middle: Place = [(x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2];
          made.push(this.elements.push({ nodes: [...ring(z0), ...ring(z1)], material, middle }));
        }
      }
    }
    return made;
  }

  node(x: number, y: number, z: number): number {
    const found = this.#numbers.get(keyOf(x, y, z));
    if (found === undefined) throw new Error(`no node at ${keyOf(x, y, z)}`);
    return found;
  }

  nodesAt(wanted: (...place: Place) => boolean): readonly number[] {
    return this.nodes.flatMap((place, n) => (wanted(...place) ? [n + 1] : []));
  }

  where(elements: readonly number[], wanted: (...middle: Place) => boolean): readonly number[] {
    return elements.filter((n) => wanted(...(this.elements[n - 1]?.middle ?? [NaN, NaN, NaN])));
  }

  #make(x: number, y: number, z: number): number {
    const key = keyOf(x, y, z);
    const number = this.#numbers.get(key) ?? this.nodes.push([x, y, z]);
    this.#numbers.set(key, number);
    return number;
  }
}

const keyOf = (...place: Place): string => place.map((one) => (one * 1e6).toFixed(0)).join(' ');

const pairs = (row: readonly number[]): readonly (readonly [number, number])[] =>
  row.slice(1).map((to, i) => [row[i] ?? Number.NaN, to] as const);
