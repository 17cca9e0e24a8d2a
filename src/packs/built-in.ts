import { builtInPackTexts } from '../generated/built-in-packs.ts';
import type { Pack } from './pack.ts';

let parsed: readonly Pack[] | undefined;

/** The packs that come with planish; parsed at the first call. Their rules were proved when they were compiled in. */
export function builtInPacks(): readonly Pack[] {
  parsed ??= builtInPackTexts.map((text) => {
    const pack: Pack = JSON.parse(text);
    return pack;
  });
  return parsed;
}
