import type { RunHead, UsedPack } from './plan-report.ts';

/** Enough of a digest to tell two packs apart by eye: `sha256:` and twelve digits. The forms for machines carry it whole. */
export function shortDigest(digest: string): string {
  return digest.slice(0, 'sha256:'.length + 12);
}

/** `general 3.0.0 (not released), sha256:0123456789ab` */
export function packWords({ pack, version, digest, released, newer }: UsedPack): string {
  const state = released ? '' : ' (not released)';
  const later = newer === undefined ? '' : ` (${newer} is here)`;
  return `${pack} ${version}${state}${later}, ${shortDigest(digest)}`;
}

/** By what a run judged, in one sentence; `packs` are those that took part, where the plans of a run differ in them. */
export function judgedSentence(
  { asOf, planish, factSchema, packs: ofRun }: RunHead,
  packs: readonly UsedPack[] = ofRun,
): string {
  return `Judged as of ${asOf} by ${packs.map(packWords).join('; ')}; planish ${planish}, fact schema ${String(factSchema)}.`;
}
