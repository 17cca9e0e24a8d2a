'use strict';

const { existsSync, readFileSync } = require('node:fs');
const path = require('node:path');
const { Script } = require('node:vm');

// This folder is CommonJS (see package.json beside this file) because Node runs a CommonJS start file about
// 4 ms sooner than an ES module, and imports a CommonJS bundle from an ES module about 20 ms later.

const cacheHeaderLength = 128;

/** Runs the bundle in the given folder; without one, says on stderr how to make it and leaves status 2. */
function start(folder) {
  const bundle = path.join(folder, 'planish.bundle.cjs');
  if (!existsSync(bundle)) {
    process.stderr.write(
      `planish: ${bundle} is not there. In the checkout, run npm ci, or npm run prepare.\n`,
    );
    process.exitCode = 2;
    return;
  }
  load(bundle).runInThisContext()({}, require, module, bundle, folder);
}

/** The bundle as a script, compiled from the code cache beside it where there is one made from this bundle by this Node. */
function load(bundle) {
  const source = readFileSync(bundle, 'utf8');
  const cachedData = readCache(bundle, source);
  // The wrapper stays on the first line, so that line numbers in a stack trace are the bundle's.
  return new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: bundle,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
}

/** A cache that V8 itself does not accept (other flags, other build) is dropped by it, and the source compiled as usual. */
function readCache(bundle, source) {
  try {
    const cache = readFileSync(cachePath(bundle));
    return cache.toString('latin1', 0, cacheHeaderLength) === cacheHeader(source)
      ? cache.subarray(cacheHeaderLength)
      : undefined;
  } catch {
    return undefined;
  }
}

/**
 * What a cache must say of itself to be used. V8 compares only the length of the source, so a cache left over from
 * another build could run that build's code: the digest that ends each bundle is compared here instead.
 */
function cacheHeader(source) {
  const digest = source.slice(source.lastIndexOf(' ', source.length - 2) + 1).trim();
  return `${process.version} ${process.platform} ${process.arch} ${digest}`.padEnd(cacheHeaderLength);
}

function cachePath(bundle) {
  return bundle.replace(/\.cjs$/, '.cache');
}

module.exports = { start, load, cacheHeader, cachePath };
