import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { generatedFiles } from '../.build/generated-files.ts';

const root = path.dirname(import.meta.dirname);

describe('files made from others are as they would be made now (npm run generate)', () => {
  for (const file of generatedFiles) {
    // A schema that a room has not written yet makes nothing; the file must then not be there either.
    const hasSources = file.madeFrom.every((source) => existsSync(path.join(root, source)));
    it(file.path, async () => {
      const target = path.join(root, file.path);
      const present = existsSync(target) ? readFileSync(target, 'utf8') : undefined;
      // Compared as a truth and not as two texts: the difference of two long files would fill the screen.
      expect(present === (hasSources ? await file.make() : undefined), 'up to date').toBe(true);
    });
  }
});
