// Makes bin/planish.bundle.cjs (everything that planish needs, in one file), the notices of the packages in it, the same for the
// commands that are started most often, each alone (bin/planish.bundle.check.cjs …), a V8 code cache beside each, the packs that come with planish, and the manual page. Run by `npm ci` and `npm run prepare`.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build, transform } from 'esbuild';
import { eagerYaml } from './eager-yaml.mjs';
import { lazyChildProcess } from './lazy-child-process.mjs';
import { onePicomatch } from './one-picomatch.mjs';
import { ownColourChoice } from './own-colour-choice.mjs';

const root = path.dirname(import.meta.dirname);
const bundle = path.join(root, 'bin/planish.bundle.cjs');
const entry = process.env.PLANISH_BUNDLE_ENTRY ?? path.join(root, 'src/cli/main.ts');
/** Commands that have a bundle of their own as well; see bin/start.js. */
const alone = ['check', 'steel'];

/** Stands in the code where its own digest is to stand; see src/cli/build-id.ts. */
const buildIdMark = 'the build'.padEnd(64, '.');

/** Nobody reads a compiled schema: with short names it is half as long, and each start reads it. */
const shortValidators = {
  name: 'short validators',
  setup: ({ onLoad }) => {
    onLoad({ filter: /[\\/]generated[\\/]validate-[\w-]+\.js$/ }, async ({ path: file }) => {
      const { code } = await transform(readFileSync(file, 'utf8'), {
        minify: true,
        target: 'node20.19',
        format: 'esm',
      });
      return { contents: code, loader: 'js' };
    });
  },
};

// A half-made set must not be found: an old cache goes before the new bundle comes.
for (const suffix of [
  'licenses.txt',
  ...['', ...alone.map((word) => `${word}.`)].flatMap((name) => [`${name}cache`, `${name}cjs`]),
])
  rmSync(bundle.replace(/cjs$/, suffix), { force: true });

writeFileSync(bundle.replace(/cjs$/, 'licenses.txt'), notices(await bundled(entry, bundle)));
const own = alone.map((word) => bundle.replace(/cjs$/, `${word}.cjs`));
for (const [index, word] of alone.entries())
  await bundled(path.join(root, `src/cli/${word}-main.ts`), own[index]);
for (const name of ['built-in-packs.json', 'built-in-cases.json'])
  copyFileSync(path.join(root, 'src/generated', name), path.join(root, 'bin', name));
for (const made of [bundle, ...own]) writeCache(made);
writeManual();

/** Writes what an entry needs in one file and gives the files it is made of. */
async function bundled(from, outfile) {
  const result = await build({
    entryPoints: [from],
    absWorkingDir: root,
    bundle: true,
    platform: 'node',
    target: 'node20.19',
    format: 'cjs',
    // Some packages ask for import.meta.url, which CommonJS does not have.
    // Package yaml looks LOG_TOKENS up for every token, a tenth of its time, and would print its tokens on stdout.
    define: {
      'import.meta.url': 'bundleUrl',
      'process.env.LOG_TOKENS': 'undefined',
      'process.env.PLANISH_BUILD_ID': JSON.stringify(buildIdMark),
    },
    banner: { js: "const bundleUrl = require('node:url').pathToFileURL(__filename).href;" },
    // Its package gives the modules it is made of only to browsers' bundlers; taken whole, two thirds of it are never called.
    alias: { 'ml-matrix': path.join(root, 'node_modules/ml-matrix/src/index.js') },
    plugins: [eagerYaml, lazyChildProcess, onePicomatch, ownColourChoice, shortValidators],
    logOverride: { 'empty-import-meta': 'error' },
    // Each start reads the whole file; white space is a third of it. Names stay, for the stack traces.
    minifyWhitespace: true,
    legalComments: 'none',
    metafile: true,
    write: false,
    outfile,
  });
  const [output] = result.outputFiles;
  if (output === undefined) throw new Error('esbuild gave no output');
  const code = withBuildId(ascii(output.text));
  const digest = createHash('sha256').update(code).digest('hex');
  writeFileSync(outfile, `${code}// sha256 ${digest}\n`);
  return Object.keys(result.metafile.inputs);
}

/**
 * Made by a process of its own, so that the cache holds what a run compiles and nothing of this script. A cache that could not be
 * made costs some milliseconds at each start and nothing else.
 */
function writeCache(of) {
  const made = spawnSync(process.execPath, [path.join(import.meta.dirname, 'code-cache.cjs'), of], {
    cwd: root,
    env: { ...process.env, NO_COLOR: '1' },
    stdio: ['ignore', 'ignore', 'pipe'],
    timeout: 60_000,
  });
  if (made.error ?? made.status === null) {
    process.stderr.write('planish: no code cache was made; planish starts without one, a little later.\n');
  }
}

/** The manual page that npm installs; it is printed by the command line that it tells of. */
function writeManual() {
  const manual = spawnSync(process.execPath, [path.join(root, 'bin/planish.js'), 'man'], {
    encoding: 'utf8',
    timeout: 60_000,
  });
  if (manual.status === 0) writeFileSync(path.join(root, 'bin/planish.1'), manual.stdout);
  else process.stderr.write('planish: no manual page was made.\n');
}

/** The digest of everything but itself, once, in the place of the mark; a bundle that keeps no packs has none. */
function withBuildId(text) {
  const pieces = text.split(buildIdMark);
  if (pieces.length > 2) throw new Error('the mark of the build stands in the bundle more than once');
  return pieces.join(createHash('sha256').update(text).digest('hex'));
}

/**
 * V8 holds a text of ASCII alone in half the room and Node reads it twice as fast. esbuild escapes what it can without
 * looking into regular expressions and templates; what is left is escaped here.
 */
function ascii(text) {
  return text.replaceAll(/(\\?)([^\0-\x7F])/g, (_whole, backslash, unit) => {
    // A backslash before such a character would come to stand before the escape.
    if (backslash !== '') throw new Error(`a backslash stands before ${unit} in the bundle`);
    return `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}

/** The licences of MIT, ISC and the like ask that their notice goes with every copy. */
function notices(inputs) {
  const folders = new Set();
  for (const input of inputs) {
    const match = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input);
    if (match !== null) folders.add(match[0]);
  }
  return [...folders]
    .sort()
    .map((folder) => notice(path.join(root, folder)))
    .join('\n\n');
}

function notice(folder) {
  const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e([.-]|$)/i.test(entry));
  if (file === undefined) throw new Error(`${name} has no licence file to copy`);
  return `${name} ${version} (${license})\n\n${readFileSync(path.join(folder, file), 'utf8').trim()}\n`;
}
