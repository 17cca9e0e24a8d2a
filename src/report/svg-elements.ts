import { escaped } from './escaped.ts';

/** From a value to its place along an axis of the picture. */
export type Along = (value: number) => number;

export function polyline(
  xs: readonly number[],
  ys: readonly number[],
  x: Along,
  y: Along,
  style: string,
): string {
  const points = xs.map((mm, index) => `${n(x(mm))},${n(y(ys[index] ?? 0))}`).join(' ');
  return `<polyline points="${points}" fill="none" ${style}/>`;
}

export function line(x1: number, y1: number, x2: number, y2: number, style: string): string {
  return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" ${style}/>`;
}

export function text(x: number, y: number, words: string, style: string): string {
  return `<text x="${n(x)}" y="${n(y)}"${style === '' ? '' : ` ${style}`}>${escaped(words)}</text>`;
}

/** Words in lines of at most so many letters; a longer word is cut, since in a picture it would run over the edge. */
export function pieces(words: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(' ').flatMap((one) => cut(one, most))) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else {
      lines.push(word);
    }
  }
  return lines;
}

function cut(word: string, most: number): readonly string[] {
  const letters = [...word];
  return Array.from({ length: Math.max(1, Math.ceil(letters.length / most)) }, (_, index) =>
    letters.slice(index * most, (index + 1) * most).join(''),
  );
}

/** At most two decimals, and never an exponent: what XML readers and people take alike. */
export function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}
