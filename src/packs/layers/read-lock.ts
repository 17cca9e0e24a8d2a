import { validatePack } from '../../generated/validate-pack.js';
import { decodeText } from '../../plan/decode-text.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import type { LockedVersion } from './choose-versions.ts';
import { FaultList } from '../reading/fault-list.ts';
import type { PackFault } from '../pack-fault.ts';
import { readPackFile } from '../reading/read-pack-file.ts';
import { readVersion } from '../versions/semantic-version.ts';
import { tellSchemaErrors } from '../reading/tell-schema-errors.ts';

/** Name of the file that fixes the packs of a folder of jobs. */
export const lockName = 'planish.lock.yaml';

export type LockReading =
  | { readonly ok: true; readonly versions: ReadonlyMap<string, LockedVersion> }
  | { readonly ok: false; readonly faults: readonly PackFault[] };

/** Reads a lock file; what cannot be right in it is told all at once. */
export function readLock(file: string): LockReading {
  const reading = readPlanFile(file);
  if (!reading.ok) return refuse(file, '', reading.fault.sentence);
  const decoded = decodeText(reading.bytes);
  if (!decoded.ok) return refuse(file, decoded.text, decoded.fault.sentence);
  const { value, valueAt, list } = readPackFile('', { name: file, text: decoded.text });
  const versions = new Map<string, LockedVersion>();
  if (value !== undefined && !validatePack(value)) {
    tellSchemaErrors(validatePack.errors ?? [], valueAt, list);
  } else if (value !== undefined && !('lock' in value)) {
    list.at('', 'A lock begins with `lock: 1` and lists `packs`.');
  } else if (value !== undefined) {
    value.packs.forEach(({ pack, version, digest }, index) => {
      const at = `/packs/${String(index)}`;
      if (readVersion(version) === undefined) list.at(`${at}/version`, 'A version is three numbers: 1.0.0.');
      if (!/^sha256:[0-9a-f]{64}$/u.test(digest)) {
        list.at(`${at}/digest`, 'A digest is `sha256:` and 64 digits 0-9 and a-f.');
      }
      if (versions.has(pack)) list.at(`${at}/pack`, `The pack \`${pack}\` stands in the lock twice.`);
      versions.set(pack, { version, digest });
    });
  }
  return list.faults.length > 0 ? { ok: false, faults: list.faults } : { ok: true, versions };
}

function refuse(file: string, text: string, sentence: string): LockReading {
  const list = new FaultList({ path: file, text }, undefined);
  list.atRange(undefined, sentence);
  return { ok: false, faults: list.faults };
}
