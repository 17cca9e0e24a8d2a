import type { Segment } from '../packs/message-template.ts';

/** A message with its facts put in. A fact without a text is `unknown`; in an optional stretch it drops the stretch. */
export function fillMessage(segments: readonly Segment[], texts: ReadonlyMap<string, string>): string {
  return segments.map((segment) => fill(segment, texts)).join('');
}

function fill(segment: Segment, texts: ReadonlyMap<string, string>): string {
  switch (segment.kind) {
    case 'text':
      return segment.text;
    case 'fact':
      return asSaid(texts.get(segment.name) ?? 'unknown');
    case 'optional': {
      const missing = segment.segments.some((part) => part.kind === 'fact' && !texts.has(part.name));
      return missing ? '' : fillMessage(segment.segments, texts);
    }
  }
}

const each: ReadonlyMap<string, number> = new Map([
  ['s min', 60],
  ['s h', 3600],
  ['mm m', 1000],
]);

/** In a sentence nobody says `600 s (10 min)`: where the larger unit says it all, the smaller is left to the numbers below. */
function asSaid(text: string): string {
  const [, small, unit, large, largeUnit] = /^(-?\d+) (s|mm) \((-?[\d.]+) (min|h|m)\)$/.exec(text) ?? [];
  const isSame =
    Number(small) === Number(large) * (each.get(`${unit ?? ''} ${largeUnit ?? ''}`) ?? Number.NaN);
  return isSame ? `${large ?? ''} ${largeUnit ?? ''}` : text;
}
