// Runs the bundle once, as a user would, and writes down what V8 compiled for it: a cache made before the run holds only
// the outermost functions and saves half as much.
'use strict';

const { readFileSync, renameSync, writeFileSync } = require('node:fs');
const path = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { cacheHead, cachePath, load } = require('../bin/start.js');

const bundle = path.resolve(process.argv[2] ?? path.join(__dirname, '../bin/planish.bundle.cjs'));
const script = load(bundle);

// A designation of each kind, so that the grammar and what is said of unknown names are compiled too.
const designations = [
  'DC04',
  '22MnB5+AS150 1.4 mm',
  'EN AW-6016-T4',
  'SPFC590Y',
  '217 ksi',
  'boron',
  'XQ 17 A',
  'HC34OLA',
];
const runs = bundle.endsWith('.steel.cjs')
  ? [
      ['steel', '--format', 'json', ...designations],
      ['steel', ...designations],
    ]
  : [['check', 'examples']];
// V8 notes in the cache which functions it compiled to machine code in these runs, and compiles them so again at their first call: 10 ms
// at each start that only long runs would earn back, and those compile them anyway. So nothing is compiled so far here. The flags are part
// of what a cache is accepted by, and are set back before it is made.
const compilers = ['sparkplug', 'turbofan'];
for (const compiler of compilers) setFlagsFromString(`--no-${compiler}`);
process.on('exit', () => {
  for (const compiler of compilers) setFlagsFromString(`--${compiler}`);
  const code = script.createCachedData();
  const head = cacheHead(readFileSync(bundle, 'utf8'), code);
  // Written aside and moved, so that a planish that starts meanwhile finds a whole cache or none.
  const aside = `${cachePath(bundle)}.${process.pid}`;
  writeFileSync(aside, Buffer.concat([Buffer.from(head, 'latin1'), code]));
  renameSync(aside, cachePath(bundle));
});
for (const words of runs) {
  process.argv = [process.execPath, path.join(__dirname, '../bin/planish.js'), ...words];
  script.runInThisContext()({}, require, module, bundle, path.dirname(bundle));
}
