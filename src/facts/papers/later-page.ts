/** A page number as a citation writes it: `p. 12-19`, `page 4`. A sheet has two sides. */
const page = /\b(?:p|pp|pg|page|pages)\.?\s*(\d+)(?:\s*[-–]\s*(\d+))?/iu;

/** A place of a document beyond its second page, wherever the plan cites it; undefined where it cites none. */
export function laterPage(node: unknown, id: string): string | undefined {
  if (Array.isArray(node)) {
    for (const one of node) {
      const found = laterPage(one, id);
      if (found !== undefined) return found;
    }
    return undefined;
  }
  if (typeof node !== 'object' || node === null) return undefined;
  if ('reference' in node && 'at' in node && node.reference === id && typeof node.at === 'string') {
    const [, first = '0', last = first] = page.exec(node.at) ?? [];
    if (Number(last) > 2) return node.at;
  }
  return laterPage(Object.values(node), id);
}
