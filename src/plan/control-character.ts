export interface ControlCharacter {
  readonly offset: number;
  /** As it is named to the reader, such as `U+001B (a control character)`. */
  readonly name: string;
}

/**
 * Everything that an editor shows differently from what the parser reads: C0 and C1 controls and DEL, marks that turn the
 * direction of writing, characters without width, line ends that only some programs know (a lone CR, U+2028, U+2029), a byte order mark inside.
 * With any of these a line could look like part of the plan while it hides in a comment, or the other way round.
 */
const hidden =
  // eslint-disable-next-line no-control-regex -- finding these is what the pattern is for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]|\r(?!\n)/;

/** The first character of the text that a plan may not hold. */
export function findControlCharacter(text: string): ControlCharacter | undefined {
  const match = hidden.exec(text);
  if (match === null) return undefined;
  const unit = text.charCodeAt(match.index);
  const number = unit.toString(16).toUpperCase().padStart(4, '0');
  return { offset: match.index, name: `U+${number} (${describe(unit)})` };
}

function describe(unit: number): string {
  if (unit === 0x0d) return 'a carriage return without a line feed';
  if (unit === 0x85 || unit === 0x2028 || unit === 0x2029) return 'a line end that few programs know';
  if (unit === 0xfeff) return 'a byte order mark inside the text';
  if (
    unit === 0xad ||
    unit === 0x180e ||
    (unit >= 0x200b && unit <= 0x200d) ||
    (unit >= 0x2060 && unit <= 0x2065)
  ) {
    return 'a character that nobody sees';
  }
  if (unit === 0x61c || unit > 0x2000) return 'a mark that turns the direction of writing';
  return 'a control character';
}
