/**
 * Reads the same plans with package yaml's own `parseDocument` and with `readYaml`, in turn, and prints the ratio of the
 * times. Not a test: run it by hand with `npx tsx tests/bench/read-yaml.ts [plans]`.
 */
import { parseDocument } from 'yaml';
import { plainValue } from '../../src/plan/plain-value.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';

const plans = Number(process.argv[2] ?? 200);
const rounds = 9;

function part(index: number): string {
  return `  - id: part-${index}
    name: Door ring, left ${index}
    kind: door ring
    structural: true
    under: side-panel-${index}          # the layer that hides it
    grade: 22MnB5+AS150
    grade_from: {reference: M1, at: p. 4}
    thickness: 1.4 mm
    damage: {kind: kink, found_by: outer panel cut back}
    operations:
      - do: replace
        extent: whole
        cite: {reference: M1, at: "p. 12-19"}
        joints:
          - {to: sill-inner-${index}, method: resistance spot, sheets: [part-${index}, sill-inner-${index}], count: 56, nugget: 6.2 mm}
          - {to: roof-rail-${index}, method: MIG braze, sheets: [part-${index}, roof-rail-${index}], count: 12, pitch: 33 mm}
      - do: heat
        source: induction
        temperature: 600 °C
        hold: 30 s
        near: [{part: ring-l, distance: 40 mm, path: same sheet}, {item: structural adhesive, distance: 25 mm, path: joined}]
`;
}

function plan(seed: number): string {
  const head = `format: 1
stage: start                        # draft | start | release
rules: [general@1, corvane-tarn@2026]
job: {number: K-${seed}, opened: 2026-10-05, written_by: {name: R. Amsel, role: estimator}}
vehicle:
  maker: Corvane
  model: Tarn
  body: wagon
  model_year: 2021
references:
  - id: M1
    kind: maker procedure
    title: Front door ring, replacement
    document: BRM-TRN-3120
    revision: D
    covers: {maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022}
    looked_up: 2026-10-06
parts:
`;
  return head + Array.from({ length: 8 }, (_, index) => part(seed * 10 + index)).join('');
}

const texts = Array.from({ length: plans }, (_, index) => plan(index));
let kept: unknown;

function time(read: (text: string) => unknown): number {
  const start = process.hrtime.bigint();
  for (const text of texts) kept = read(text);
  return Number(process.hrtime.bigint() - start) / 1e6;
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;
const readers = {
  'parseDocument, defaults': (text: string) => parseDocument(text),
  'parseDocument, schema core, string keys': (text: string) =>
    parseDocument(text, { schema: 'core', stringKeys: true }),
  readYaml: (text: string) => readYaml(text),
  'readYaml + plainValue': (text: string) => {
    const reading = readYaml(text);
    if (!reading.ok) throw new Error(reading.faults[0]?.sentence);
    return plainValue(reading.root);
  },
};

const times = new Map<string, number[]>(Object.keys(readers).map((name) => [name, []]));
for (let round = 0; round < rounds; round += 1) {
  for (const [name, read] of Object.entries(readers)) {
    const elapsed = time(read);
    // The first round warms the machine's compiler up.
    if (round > 0) times.get(name)?.push(elapsed);
  }
}

const base = median(times.get('parseDocument, defaults') ?? []);
console.log(`${plans} plans of ${texts[0]?.split('\n').length} lines, median of ${rounds - 1} rounds`);
for (const [name, values] of times) {
  const each = median(values);
  console.log(`${name.padEnd(42)} ${(each / plans).toFixed(2)} ms a plan, ratio ${(each / base).toFixed(3)}`);
}
void kept;
