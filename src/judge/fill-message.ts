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
      return texts.get(segment.name) ?? 'unknown';
    case 'optional': {
      const missing = segment.segments.some((part) => part.kind === 'fact' && !texts.has(part.name));
      return missing ? '' : fillMessage(segment.segments, texts);
    }
  }
}
