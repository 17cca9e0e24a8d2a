'use strict';

const { createHash } = require('node:crypto');
const { existsSync, readFileSync } = require('node:fs');
const path = require('node:path');
const { Script } = require('node:vm');

// This folder is CommonJS (see package.json beside this file): Node starts a CommonJS file about 4 ms sooner than an ES
// module, and a CommonJS bundle that an ES module imports about 20 ms later than one that is required.

const headLength = 256;

/** Runs the bundle in the given folder; without one, says on stderr how to make it and leaves status 2. */
function start(folder) {
  const bundle = bundleFor(folder, process.argv[2]);
  if (!existsSync(bundle)) {
    process.stderr.write(
      `planish: ${bundle} is not there. In the checkout, run npm ci, or npm run prepare.\n`,
    );
    process.exitCode = 2;
    return;
  }
  load(bundle).runInThisContext()({}, require, module, bundle, folder);
}

/** A start takes as long as what it reads, so the commands that are started most often have a bundle of their own as well. */
function bundleFor(folder, command) {
  const own = path.join(folder, `planish.bundle.${command}.cjs`);
  return ['check', 'steel'].includes(command) && existsSync(own)
    ? own
    : path.join(folder, 'planish.bundle.cjs');
}

/** The bundle as a script: from the code cache beside it where that is whole and made from this bundle by this Node. */
function load(bundle) {
  // The bundle holds ASCII alone (.build/bundle.mjs), which is read as Latin-1 in two thirds of the time.
  const source = readFileSync(bundle, 'latin1');
  const cachedData = readCache(bundle, source);
  // The wrapper stays on the first line, so that line numbers in a stack trace are the bundle's.
  return new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: bundle,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
}

/** A cache that V8 itself does not accept (other flags) is dropped by it, and the source compiled as usual. */
function readCache(bundle, source) {
  try {
    const cache = readFileSync(cachePath(bundle));
    const code = cache.subarray(headLength);
    return cache.toString('latin1', 0, headLength) === cacheHead(source, code) ? code : undefined;
  } catch {
    return undefined;
  }
}

/**
 * What a cache must say of itself to be used. V8 compares no more than its own version and the length of the source: a
 * cache of another build could run that build's code, and one with a flipped bit was seen to give a wrong answer. So the
 * digest that ends each bundle and that of the cached code are compared here.
 */
function cacheHead(source, code) {
  const sourceDigest = source.slice(-65, -1);
  const codeDigest = createHash('sha256').update(code).digest('hex');
  return `${process.version} ${process.platform} ${process.arch} ${sourceDigest} ${codeDigest}`.padEnd(
    headLength,
  );
}

function cachePath(bundle) {
  return bundle.replace(/\.cjs$/, '.cache');
}

module.exports = { start, load, cacheHead, cachePath };
