// Runs the bundle once, as a user would, and writes down what V8 compiled for it: a cache made before the run holds only
// the outermost functions and saves half as much.
'use strict';

const { readFileSync, writeFileSync } = require('node:fs');
const path = require('node:path');
const { cacheHeader, cachePath, load } = require('../bin/start.js');

const bundle = path.join(__dirname, '../bin/planish.bundle.cjs');
const script = load(bundle);

process.argv = [process.execPath, path.join(__dirname, '../bin/planish.js'), 'check', 'examples'];
process.on('exit', () => {
  const source = readFileSync(bundle, 'utf8');
  writeFileSync(
    cachePath(bundle),
    Buffer.concat([Buffer.from(cacheHeader(source), 'latin1'), script.createCachedData()]),
  );
});
script.runInThisContext()({}, require, module, bundle, path.dirname(bundle));
