const longest = 40;

/** A piece of the author's text, short and on one line, to be named in a sentence. */
export function excerpt(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line.length <= longest) return line;
  // Counted in code points, so that a cut never leaves half a character.
  return `${Array.from(line.slice(0, longest * 2))
    .slice(0, longest - 1)
    .join('')}…`;
}
