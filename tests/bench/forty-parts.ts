import { measuredRing } from '../measured-ring.ts';

/**
 * A plan of forty parts with two hundred rows of joints, ten heats of their own and 120 measured points, made from the measured ring:
 * as long as a plan of a badly hit vehicle becomes.
 */
export function fortyParts(): string {
  const parts = Array.from({ length: 35 }, (_one, index) => partText(index));
  const points = Array.from({ length: 112 }, (_one, index) => pointText(index));
  return measuredRing
    .replace(/\nmeasurements:/u, `\n${parts.join('\n')}\n\nmeasurements:`)
    .replace(/\n {2}points:\n/u, `\n  points:\n${points.join('\n')}\n`);
}

function partText(index: number): string {
  const id = `part-${String(index)}`;
  const joints = Array.from(
    { length: 6 },
    (_one, row) =>
      `          - { to: floor, method: resistance spot, form: flange, sheets: [${id}, floor], factory_count: ${String(20 + row)}, count: ${String(27 + row)}, nugget: 5.5 mm, pitch: 35 mm, edge: 9 mm, overlap: 18 mm, coupon: passed }`,
  ).join('\n');
  const heat =
    index % 4 === 0
      ? `\n      - { do: heat, step: ${String(100 + index)}, source: induction, temperature: ${String(500 + index)} °C, hold: 20 s, times: 1, measured_by: { means: temperature crayon }, near: [{ part: ring-l, distance: ${String(60 + index)} mm, path: joined }], clear_within: 300 mm, cite: { reference: ring, at: p. 7 } }`
      : '';
  return `  - id: ${id}
    name: Reinforcement ${String(index)}
    kind: reinforcement
    structural: true
    under: side-panel-l
    grade: HC340LA
    grade_from: { reference: ring, at: p. 4 }
    thickness: 1.2 mm
    damage: { kind: bend, found_by: outer panel cut back }
    operations:
      - do: replace
        step: ${String(30 + index)}
        extent: whole
        cite: { reference: ring, at: p. 12-19 }
        joints:
${joints}
        near: []
        clear_within: 300 mm${heat}`;
}

function pointText(index: number): string {
  const [x, y, z] = [200 + 30 * index, index % 2 === 0 ? 100 : 1000, 100 + 5 * index];
  const place = (dx: number): string => `[${String(x + dx)} mm, ${String(y)} mm, ${String(z)} mm]`;
  return `    - { name: P${String(index)}, on: floor, nominal: ${place(0)}, before: ${place(0.4)}, after: ${place(0.2)} }`;
}
