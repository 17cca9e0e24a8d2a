import type { Segment } from '../packs/message-template.ts';

/** A message with its facts put in. A fact without a text is `unknown`; in an optional stretch it drops the stretch. */
export function fillMessage(segments: readonly Segment[], texts: ReadonlyMap<string, string>): string {
  return segments
    .map((segment, index) => {
      const before = segments[index - 1];
      const isOne = before?.kind === 'fact' && texts.get(before.name) === '1';
      return isOne && segment.kind === 'text' ? segment.text.replace(counted, '$1') : fill(segment, texts);
    })
    .join('');
}

/** What messages count, behind its number: "for 1 day". Their verbs are of a kind that knows no number (can, must, would). */
const counted = /^( (?:day|year|model year|joint|spot|plug weld|rivet|zero point))s\b/;

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
