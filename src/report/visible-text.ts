/**
 * Characters that could move the cursor, turn the line round or hide text: C0, DEL and C1 controls, marks and overrides of
 * writing direction, line and paragraph separators, zero-width signs, the soft hyphen, marks of annotation and tag characters.
 */
const hidden =
  // eslint-disable-next-line no-control-regex -- these are the characters it is about
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/gu;

/**
 * What a CI host would take for a command of its own in what is printed: `::` at the start of a line, which any word may come to
 * stand at, and `##[` and `##vso[` anywhere. A plan must not speak to the host.
 */
const command = /(?<=^|\s)::|##(?=\[|vso\[)/giu;

/** Text from a file or a path, with all of these shown by their number instead of acting: `\u{202E}`. */
export function visibleText(text: string): string {
  return text
    .replace(hidden, byNumber)
    .replace(command, (mark) => `${byNumber(mark.slice(0, 1))}${mark.slice(1)}`);
}

function byNumber(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return `\\u{${code.toString(16).toUpperCase().padStart(4, '0')}}`;
}
