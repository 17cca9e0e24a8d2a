import { planSchema } from '../generated/plan-schema.ts';
import { excerpt } from './excerpt.ts';
import { nearestWords } from './nearest-word.ts';
import type { SchemaPart } from './schema-keywords.ts';

/** The words that a key of the plan takes, and what the trade writes for some of them. */
export interface PlanWords {
  readonly known: readonly string[];
  readonly synonyms: ReadonlyMap<string, string>;
}

/**
 * The words of one key: of a definition (`item`), or of a key in it (`operation`, `source`). For what asks for the plan's words
 * outside of a plan; throws where the schema has no words there.
 */
export function planWords(definition: string, ...keys: readonly string[]): PlanWords {
  let part: SchemaPart | undefined = planSchema().$defs?.[definition];
  for (const key of keys) part = part?.properties?.[key];
  if (part?.enum === undefined)
    throw new Error(`the plan has no words at ${[definition, ...keys].join('.')}`);
  return { known: part.enum, synonyms: new Map(Object.entries(part.synonyms ?? {})) };
}

/** One sentence on a word that is not known: the nearest known ones, or all. `option` is where it stands. */
export function explainUnknownWord(option: string, given: string, { known, synonyms }: PlanWords): string {
  const near = nearestWords(given, known, synonyms);
  const hint =
    near.length > 0 ? `the nearest known is \`${near.join('`, `')}\`` : `it takes \`${known.join('`, `')}\``;
  return `${option} does not know \`${excerpt(given)}\`: ${hint}.`;
}
