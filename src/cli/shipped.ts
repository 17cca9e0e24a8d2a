import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Where a file or folder of the checkout or the package lies, such as `schemas/pack.schema.json`; undefined where it did not come along. */
export function shipped(name: string): string | undefined {
  // From the bundle it is one folder up, from the sources two.
  return ['..', '../..']
    .map((way) => fileURLToPath(new URL(`${way}/${name}`, import.meta.url)))
    .find((one) => existsSync(one));
}
