/** From here on listing the files alone makes V8 widen its young space before the first plan is read. */
const many = 1000;

/**
 * Tells V8 what a run over many files is like: what one plan leaves behind is rubbish when the next one is read. By itself it judges
 * from its first collections, that fall into the first plans, that what is made at some places lives long, makes it in the old
 * space from then on and lets that grow to twice the memory before it looks there.
 */
export function expectMany(files: number): void {
  if (files < many) return;
  // Loaded here, for a start takes as long as what it loads.
  process.getBuiltinModule('node:v8').setFlagsFromString('--no-allocation-site-pretenuring');
}
