import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const name = 'plan.draft-07.schema.json';

/**
 * Where the schema of plans for editors lies, as seen from a folder; undefined where it did not come with this planish. With
 * slashes, and with blanks as editors take them there.
 */
export function schemaForEditors(folder: string): string | undefined {
  // From the bundle it is one folder up, from the sources two.
  const files = ['../schemas', '../../schemas'].map((way) =>
    fileURLToPath(new URL(`${way}/${name}`, import.meta.url)),
  );
  const file = files.find((one) => existsSync(one));
  if (file === undefined) return undefined;
  const way = path.relative(path.resolve(folder), file).split(path.sep).join('/');
  return encodeURI(way);
}
