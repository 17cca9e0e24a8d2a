/** Longer texts have no two names that a reader would take for one. */
const mostEdges = 12;

/** Ways to part a text in two at a blank, bracket, comma, semicolon or stroke; both sides have two characters or more. */
export function textSplits(text: string): readonly (readonly [left: string, right: string])[] {
  const edges = [...text.matchAll(/\s*[(),;|/]\s*|\s+(?:or|and|alias)\s+|\s+/gi)].slice(0, mostEdges);
  return edges
    .map((edge) => [bare(text.slice(0, edge.index)), bare(text.slice(edge.index + edge[0].length))] as const)
    .filter(([left, right]) => left.length >= 2 && right.length >= 2);
}

function bare(text: string): string {
  return text.replace(/^[\s(),;=]+|[\s(),;=]+$/g, '');
}
