export type Segment =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'fact'; readonly name: string }
  | { readonly kind: 'optional'; readonly segments: readonly Segment[] };

export type TemplateReading =
  | { readonly ok: true; readonly segments: readonly Segment[] }
  | { readonly ok: false; readonly sentence: string };

/**
 * A message in parts: text, `{fact}`, and stretches in square brackets that are left out when a fact inside them is
 * unknown. Brackets do not nest and cannot be escaped; a message that needs them for itself says it with other words.
 */
export function readTemplate(text: string): TemplateReading {
  const outer: Segment[] = [];
  let inner: Segment[] | undefined;
  let at = 0;
  while (at < text.length) {
    const target = inner ?? outer;
    const next = nextMark(text, at);
    if (next > at) target.push({ kind: 'text', text: text.slice(at, next) });
    if (next === text.length) break;
    at = next + 1;
    switch (text[next]) {
      case '{': {
        const end = text.indexOf('}', at);
        const name = end === -1 ? '' : text.slice(at, end);
        if (name === '' || /[\s{[\]]/u.test(name))
          return refuse('`{` must be followed by the name of a fact and `}`.');
        target.push({ kind: 'fact', name });
        at = end + 1;
        break;
      }
      case '[':
        if (inner !== undefined) return refuse('A stretch in `[ ]` stands inside another one.');
        inner = [];
        break;
      case ']':
        if (inner === undefined) return refuse('`]` closes a stretch that no `[` opened.');
        if (!inner.some((segment) => segment.kind === 'fact')) {
          return refuse('A stretch in `[ ]` holds no `{fact}`, so nothing could leave it out.');
        }
        outer.push({ kind: 'optional', segments: inner });
        inner = undefined;
        break;
      default:
        return refuse('`}` closes the name of a fact that no `{` opened.');
    }
  }
  if (inner !== undefined) return refuse('`[` is not closed by `]`.');
  return { ok: true, segments: outer };
}

/** Names of the facts in a message, each once, in the order in which they stand. */
export function factsOf(segments: readonly Segment[]): readonly string[] {
  const names = new Set<string>();
  collect(segments, names);
  return [...names];
}

function collect(segments: readonly Segment[], names: Set<string>): void {
  for (const segment of segments) {
    if (segment.kind === 'fact') names.add(segment.name);
    else if (segment.kind === 'optional') collect(segment.segments, names);
  }
}

function nextMark(text: string, from: number): number {
  for (let at = from; at < text.length; at += 1) {
    const character = text[at];
    if (character === '{' || character === '}' || character === '[' || character === ']') return at;
  }
  return text.length;
}

function refuse(sentence: string): TemplateReading {
  return { ok: false, sentence };
}
