import { measuredRing } from '../measured-ring.ts';

/**
 * A whole job from intake to release: 40 parts, 200 joints, 120 measured points, every step with its day. Made from the measured ring,
 * so that it is judged on all its joints; how many of each there are is `wholeJobSize`.
 */
export function wholeJob(): string {
  const more = Array.from({ length: moreParts }, (_one, index) => partText(index)).join('');
  const still = Array.from({ length: partsAtRest }, (_one, index) => restText(index)).join('');
  const points = Array.from({ length: morePoints }, (_one, index) => pointText(index)).join('');
  return measuredRing
    .replace('\nmeasurements:\n', `\n${more}${still}\nmeasurements:\n`)
    .replace('  points:\n', `  points:\n${points}`);
}

/** The ring plan has 5 parts, 2 joints and 11 points of its own. */
const moreParts = 33;
const partsAtRest = 2;
const jointsEach = 6;
const morePoints = 109;

export const wholeJobSize = {
  parts: 5 + moreParts + partsAtRest,
  joints: 2 + moreParts * jointsEach,
  points: 11 + morePoints,
} as const;

function partText(index: number): string {
  const joints = Array.from({ length: jointsEach }, (_one, joint) => jointText(index, joint)).join('');
  return `
  - id: m${String(index)}
    name: Member ${String(index)}
    kind: sill reinforcement
    side: left
    structural: true
    grade: HC340LA
    grade_from: { reference: ring, at: p. 4 }
    thickness: ${(1 + (index % 8) / 10).toFixed(1)} mm
    damage: { kind: kink, found_by: seen }
    operations:
      - do: replace
        step: 20
        extent: whole
        cite: { reference: ring, at: p. 12-19 }
        joints:
${joints}        near: []
        clear_within: 300 mm
        earth_clamp: On the sill, beside the flange.
        control_units: Unplugged under both front seats.
        done: 2026-10-09
`;
}

function jointText(part: number, joint: number): string {
  const count = 20 + joint;
  return `          - to: sill-inner-l
            method: resistance spot
            form: flange
            sheets: [m${String(part)}, sill-inner-l]
            factory_count: ${String(count)}
            count: ${String(Math.ceil(count * 1.3))}
            nugget: 6.5 mm
            pitch: ${String(34 + joint)} mm
            edge: 10 mm
            overlap: 20 mm
            settings: { machine: Inverter gun with the short arm, program: steel ${String(joint)}, most_force: 5 kN, most_current: 14 kA }
            factory_adhesive: false
            coupon: { result: passed, date: 2026-10-08, nugget: 6.6 mm }
            count_done: ${String(Math.ceil(count * 1.3))}
            flange_coat: factory coat left whole
            record: P-${String(part)}-${String(joint)}
`;
}

function restText(index: number): string {
  return `
  - id: r${String(index)}
    name: Member at rest ${String(index)}
    kind: sill
    structural: true
    grade: HC340LA
    grade_from: { reference: ring, at: p. 4 }
    thickness: 1.2 mm
    damage: { kind: none, found_by: measured }
`;
}

function pointText(index: number): string {
  const place = [40 * index - 900, 15 * (index % 40) - 300, 9 * (index % 90)];
  const read = (offMm: number): string => place.map((value) => `${(value + offMm).toFixed(1)} mm`).join(', ');
  const on = index < moreParts ? `m${String(index)}` : 'ring-l';
  return `    - { name: P${String(index)}, on: ${on}, nominal: [${read(0)}], before: [${read(1 + (index % 7))}], after: [${read((index % 5) / 10)}] }
`;
}
