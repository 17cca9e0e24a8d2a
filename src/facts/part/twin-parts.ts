import type { Part } from '../../generated/plan-types.ts';
import type { PartSurvey, TwoSides } from '../survey.ts';

/**
 * For each part the same part of the other side that stands before it in the plan, by name and kind. Looked up once for all
 * parts, so that a long plan costs no more a line than a short one.
 */
export function twinParts(parts: readonly PartSurvey[]): ReadonlyMap<PartSurvey, PartSurvey> {
  const twins = new Map<PartSurvey, PartSurvey>();
  const seen = new Map<string, PartSurvey>();
  for (const one of parts) {
    const own = sideless(one.part);
    if (own === undefined) continue;
    const key = (side: string): string => JSON.stringify([own.name, one.part.kind, side]);
    const twin = seen.get(key(own.side === 'left' ? 'right' : 'left'));
    if (twin !== undefined) twins.set(one, twin);
    if (!seen.has(key(own.side))) seen.set(key(own.side), one);
  }
  return twins;
}

/** Twins both ways, by the place of each part in the plan. Of several on one side the first stands for it. */
export function otherSides(twins: ReadonlyMap<PartSurvey, PartSurvey>): ReadonlyMap<string, TwoSides> {
  const pairs = new Map<string, TwoSides>();
  for (const [later, earlier] of twins) {
    if (!pairs.has(earlier.at)) pairs.set(earlier.at, { own: earlier, other: later });
    pairs.set(later.at, { own: later, other: earlier });
  }
  return pairs;
}

function sideless(part: Part): { readonly name: string; readonly side: 'left' | 'right' } | undefined {
  const name = (part.name ?? part.id ?? '').toLowerCase();
  const word = /(?<![a-z])(left|right|lh|rh|l|r)(?![a-z])/u.exec(name)?.[1];
  const named = word === undefined ? undefined : word.startsWith('l') ? 'left' : 'right';
  const side = part.side === 'left' || part.side === 'right' ? part.side : named;
  if (side === undefined || name === '') return undefined;
  const bare = name
    .replace(/(?<![a-z])(?:left|right|lh|rh|l|r)(?![a-z])/u, ' ')
    .replaceAll(/[^a-z0-9]+/gu, ' ')
    .trim();
  return { name: bare, side };
}
