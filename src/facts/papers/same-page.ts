import { sameName } from '../../vehicle/same-name.ts';

/**
 * Whether a cited place and the place of a statement share a page: "p. 22" lies within "p. 20-26". What is no page or section
 * number must be the same text.
 */
export function sharePage(cited: string, stated: string): boolean {
  const one = pagesOf(cited);
  const other = pagesOf(stated);
  if (one === undefined || other === undefined || one.of !== other.of) return sameName(cited, stated);
  return one.from <= other.to && other.from <= one.to;
}

interface Pages {
  readonly of: string;
  readonly from: number;
  readonly to: number;
}

const range = /^(?<of>[a-z§]*)\.?\s*(?<from>\d+)(?:\s*[-–—]\s*(?<to>\d+))?$/u;

function pagesOf(place: string): Pages | undefined {
  const { of, from, to } = range.exec(place.trim().toLowerCase())?.groups ?? {};
  if (of === undefined || from === undefined) return undefined;
  const word = ['', 'p', 'pp', 'pages'].includes(of) ? 'page' : of;
  return { of: word, from: Number(from), to: Number(to ?? from) };
}
