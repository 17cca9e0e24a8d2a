import { createHash, randomBytes } from 'node:crypto';
import {
  closeSync,
  constants,
  fstatSync,
  openSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { factSchemaVersion } from '../../generated/fact-names.ts';
import type { Pack } from '../../packs/pack.ts';
import type { FoundPack } from '../../packs/sources/read-packed.ts';
import { buildId } from '../build-id.ts';
import { cacheFolder, isOwn, isOwnFolder, ownFolder } from './cache-folder.ts';
import { version } from '../version.ts';

/** Packs that were loaded and proved before, so that a run need not read their YAML again. Data, never code. */
export interface PackCache {
  /** The pack that these very files gave this very build of planish; undefined when it is to be loaded. */
  readonly read: (found: FoundPack) => Pack | undefined;
  /** Keeps a pack that was loaded and proved without a fault. */
  readonly keep: (found: FoundPack, pack: Pack) => void;
}

const none: PackCache = { read: () => undefined, keep: () => undefined };

/** More files than this and the oldest go. */
const mostFiles = 64;
/** A pack has at most 8 MiB of YAML; what is larger than any of them was not written here. */
const mostBytes = 64 * 1024 * 1024;

/**
 * The cache of the user. Whatever is wrong with it (no leave to write, another owner, a byte that changed), the packs are loaded
 * anew and nothing is said: it decides how long a run takes, and never how it ends. `build` stands for the code that loaded.
 */
export function packCache(
  environment: Readonly<Record<string, string | undefined>> = process.env,
  build: string | undefined = buildId,
): PackCache {
  const folder = cacheFolder(environment);
  if (folder === undefined || build === undefined) return none;
  const keys = new WeakMap<FoundPack, string>();
  const keyFor = (found: FoundPack): string => {
    const key = keys.get(found) ?? keyOf(found, build);
    keys.set(found, key);
    return key;
  };
  return {
    read: (found) => (isWhole(found) ? quietly(() => readEntry(folder, keyFor(found))) : undefined),
    keep: (found, pack) => {
      if (!isWhole(found)) return;
      quietly(() => {
        writeEntry(folder, keyFor(found), pack);
      });
    },
  };
}

function isWhole({ files: { faults, isRefused } }: FoundPack): boolean {
  return faults.length === 0 && !isRefused;
}

/** Of all that a loaded pack depends on: the build, and the names, texts and place of its files. */
function keyOf({ files: { files }, where }: FoundPack, build: string): string {
  const hash = createHash('sha256');
  // Lengths stand before the texts, so that no two lists of texts give one stream of bytes.
  const add = (text: string): void => {
    hash.update(`${String(text.length)}:`).update(text);
  };
  [build, version, String(factSchemaVersion), where, String(files.length)].forEach(add);
  for (const { name, text } of files) {
    add(name);
    add(text);
  }
  return hash.digest('hex');
}

function head(key: string, body: string): string {
  const digest = createHash('sha256').update(key).update(body).digest('hex');
  return `planish pack ${key} ${digest}\n`;
}

function readEntry(folder: string, key: string): Pack | undefined {
  if (!isOwnFolder(folder)) return undefined;
  const text = readOwnFile(entryPath(folder, key));
  if (text === undefined) return undefined;
  const end = text.indexOf('\n') + 1;
  const body = text.slice(end);
  if (text.slice(0, end) !== head(key, body)) return undefined;
  const pack: unknown = JSON.parse(body);
  return isPack(pack) ? pack : undefined;
}

/** The digest says that planish wrote it; this only tells the compiler what that was. */
function isPack(value: unknown): value is Pack {
  return typeof value === 'object' && value !== null && 'rules' in value && Array.isArray(value.rules);
}

/** Asked of the opened file, so that it cannot be exchanged between the question and the reading. */
function readOwnFile(file: string): string | undefined {
  const descriptor = openSync(file, constants.O_RDONLY | constants.O_NOFOLLOW | constants.O_NONBLOCK);
  try {
    const stats = fstatSync(descriptor);
    if (!stats.isFile() || !isOwn(stats) || stats.size > mostBytes) return undefined;
    return readFileSync(descriptor, 'utf8');
  } finally {
    closeSync(descriptor);
  }
}

/** Written aside and moved, so that a run beside this one finds a whole entry or none. */
function writeEntry(folder: string, key: string, pack: Pack): void {
  if (!ownFolder(folder)) return;
  const body = JSON.stringify(pack);
  const aside = path.join(folder, `${key}.${String(process.pid)}.${randomBytes(6).toString('hex')}`);
  try {
    writeFileSync(aside, head(key, body) + body, { flag: 'wx', mode: 0o600 });
    renameSync(aside, entryPath(folder, key));
  } catch (error) {
    rmSync(aside, { force: true });
    throw error;
  }
  dropOldest(folder);
}

function dropOldest(folder: string): void {
  const names = readdirSync(folder);
  if (names.length <= mostFiles) return;
  const dated = names.map((name) => ({ name, time: statSync(path.join(folder, name)).mtimeMs }));
  const oldest = dated.toSorted((a, b) => a.time - b.time).slice(0, names.length - mostFiles);
  for (const { name } of oldest) rmSync(path.join(folder, name), { force: true });
}

function entryPath(folder: string, key: string): string {
  return path.join(folder, `${key}.json`);
}

function quietly<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}
