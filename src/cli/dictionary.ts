import { factDictionary, factSchemaVersion, sheetKinds } from '../generated/fact-names.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';

/** The facts of this planish, as packs and judge ask for them. */
export const dictionary: FactDictionary = {
  version: factSchemaVersion,
  facts: factDictionary,
  kinds: sheetKinds,
};
