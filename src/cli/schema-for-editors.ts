import path from 'node:path';
import { shipped } from './shipped.ts';

/**
 * Where the schema of plans or packs for editors lies, as seen from a folder; undefined where it did not come with this planish. With
 * slashes, and with blanks as editors take them there.
 */
export function schemaForEditors(of: 'plan' | 'pack', folder: string): string | undefined {
  const file = shipped(`schemas/${of}.draft-07.schema.json`);
  if (file === undefined) return undefined;
  const way = path.relative(path.resolve(folder), file).split(path.sep).join('/');
  return encodeURI(way);
}
