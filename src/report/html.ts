import { escaped } from './escaped.ts';

/** A piece of a page whose text is already escaped. Only `html`, `joined` and pictures that are drawn here make one. */
export class Markup {
  readonly source: string;

  constructor(source: string) {
    this.source = source;
  }
}

export const nothing = new Markup('');

/** What a page is put together from. A string is text, whoever wrote it: it is escaped here, and nowhere else. */
export type Piece = string | number | Markup | readonly Markup[];

/** A piece of a page: html`<td>${text}</td>`. Values stand in content or in attribute values in double quotes. */
export function html(strings: TemplateStringsArray, ...pieces: readonly Piece[]): Markup {
  let source = strings[0] ?? '';
  pieces.forEach((piece, index) => {
    source += sourceOf(piece) + (strings[index + 1] ?? '');
  });
  return new Markup(source);
}

function sourceOf(piece: Piece): string {
  if (piece instanceof Markup) return piece.source;
  if (typeof piece === 'string' || typeof piece === 'number') return escaped(String(piece));
  return piece.map(({ source }) => source).join('\n');
}

/** Pieces with words between them. */
export function joined(pieces: readonly Markup[], between: string): Markup {
  return new Markup(pieces.map(({ source }) => source).join(escaped(between)));
}

/** The piece, or nothing. */
export function where(holds: boolean, make: () => Markup): Markup {
  return holds ? make() : nothing;
}
