import type { DamageKind } from '../../generated/plan-types.ts';

/** What words for the extent say, and the kinds of damage that say it already. English alone is read. */
const graver: readonly (readonly [said: RegExp, kinds: readonly DamageKind[]])[] = [
  [/^kink(?:s|ed)?\b/i, ['kink', 'tear', 'crack']],
  [/^(?:torn|tears?)\b/i, ['tear', 'crack']],
  [/^crack(?:s|ed)?\b/i, ['crack', 'tear']],
  [/^(?:creases?|creased)\b/i, ['crease', 'kink', 'tear', 'crack']],
];

/** Words that may stand before it in its clause and leave it as it is. */
const leading =
  /^(?:a|an|the|one|two|three|slight(?:ly)?|sharp(?:ly)?|small|deep(?:ly)?|hairline|hair|visible|also|with|is|was|and|then|there)\s+/i;

/** The clause in which the extent of a damage tells of something graver than its kind: "kinked at the crush box" of a bend. */
export function graverInWords(extent: string | undefined, kinds: readonly DamageKind[]): string | undefined {
  if (extent === undefined || kinds.includes('not yet seen')) return undefined;
  return extent
    .split(/[,;.:]|\band\b|\bwith\b/i)
    .map((clause) => clause.trim())
    .find((clause) => {
      const core = withoutLead(clause);
      return graver.some(([said, known]) => said.test(core) && !known.some((kind) => kinds.includes(kind)));
    });
}

function withoutLead(clause: string): string {
  const rest = clause.replace(leading, '');
  return rest === clause ? clause : withoutLead(rest);
}
