import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { stringify } from 'yaml';

// Whole plans at random, most of them bad, of all that rules ask about: for what must hold of every plan.

const pick = <T>(...values: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...values);
const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });
const amount = (least: number, most: number, unit: string): fc.Arbitrary<string> =>
  fc.integer({ min: least, max: most }).map((number) => `${String(number)} ${unit}`);

const partIds = ['p0', 'p1', 'p2'] as const;
const referenceIds = ['own', 'old', 'course', 'bare'] as const;

const cite = fc.record({
  reference: pick(...referenceIds, 'nowhere'),
  at: maybe(pick('p. 4', 'section 2')),
});

const references = [
  {
    id: 'own',
    kind: 'maker procedure',
    document: 'BRM-1',
    revision: 'D',
    published: '2021-02-01',
    covers: { maker: 'Corvane', model: 'Tarn', bodies: ['all'], years: '2020-2022' },
    looked_up: '2026-10-06',
  },
  {
    id: 'old',
    kind: 'maker procedure',
    document: 'BRM-0',
    revision: 'A',
    covers: { maker: 'Corvane', model: 'Tarn', bodies: ['all'], years: '2015-2019' },
    looked_up: '2026-09-01',
  },
  { id: 'course', kind: 'training', title: 'A course' },
  { id: 'bare', kind: 'maker bulletin', covers: { maker: 'Corvane', model: 'Tarn', years: '2021' } },
];

const near = fc.record({
  part: maybe(pick(...partIds)),
  item: maybe(pick('structural adhesive', 'wiring', 'airbag', 'foam')),
  distance: maybe(amount(5, 150, 'mm')),
  path: maybe(pick('same sheet', 'joined', 'through air')),
  treatment: maybe(pick('stays', 'removed', 'shielded', 'renewed')),
});

const joint = fc.record({
  to: maybe(pick(...partIds)),
  method: maybe(pick('resistance spot', 'plug weld', 'arc seam', 'adhesive', 'blind rivet')),
  sheets: maybe(fc.array(pick(...partIds), { minLength: 1, maxLength: 3 })),
  nugget: maybe(amount(3, 9, 'mm')),
  pitch: maybe(amount(10, 60, 'mm')),
  edge: maybe(amount(4, 15, 'mm')),
  hole: maybe(amount(5, 10, 'mm')),
  pattern: maybe(fc.record({ count: maybe(fc.integer({ min: 1, max: 60 })), cite: maybe(cite) })),
  form: maybe(pick('flange', 'lap', 'open butt')),
  count: maybe(fc.integer({ min: 1, max: 60 })),
  factory_count: maybe(fc.integer({ min: 1, max: 60 })),
  coupon: maybe(pick('planned', 'passed', 'failed')),
  settings: maybe(
    fc.record({ heat_input: fc.integer({ min: 5, max: 40 }).map((n) => `${String(n / 100)} kJ/mm`) }),
  ),
});

const operation = fc.record({
  do: maybe(
    pick(
      'replace',
      'section',
      'butt weld',
      'heat',
      'heat',
      'straighten',
      'weld',
      'drill',
      'refinish',
      'leave',
      'fill',
    ),
  ),
  step: maybe(fc.integer({ min: 1, max: 30 })),
  extent: maybe(pick('whole', 'part')),
  at: maybe(pick('B', 'C')),
  method: maybe(pick('cold', 'with heat')),
  cite: maybe(fc.oneof(cite, fc.array(cite, { maxLength: 3 }))),
  source: maybe(pick('torch', 'induction')),
  temperature: maybe(amount(50, 900, '°C')),
  hold: maybe(amount(5, 300, 's')),
  times: maybe(fc.integer({ min: 1, max: 4 })),
  measured_by: maybe(fc.record({ means: pick('temperature crayon', 'contact probe', 'infra-red', 'none') })),
  near: maybe(fc.array(near, { maxLength: 3 })),
  free_end: pick('runs on', 'runs on', '400 mm', undefined),
  starts_below: maybe(amount(20, 60, '°C')),
  clear_within: maybe(amount(100, 400, 'mm')),
  joints: maybe(fc.array(joint, { maxLength: 2 })),
});

const material = fc.oneof(
  fc.record({ strength: amount(200, 1900, 'MPa') }),
  fc.record({ grade: pick('HC340LA', 'DC04', '22MnB5+AS150', 'HCT780X', 'XQ-17') }),
  fc.record({ class: pick('mild', 'ultra-high-strength', 'aluminium') }),
  fc.constant({}),
);

const part = fc
  .record({
    kind: maybe(pick('door ring', 'b-pillar', 'sill', 'front rail', 'side panel', 'bonnet', 'bracket')),
    structural: maybe(fc.boolean()),
    over: maybe(pick(...partIds)),
    joined_to: maybe(fc.array(pick(...partIds), { maxLength: 2 })),
    thickness: maybe(fc.integer({ min: 6, max: 25 }).map((tenths) => `${String(tenths / 10)} mm`)),
    grade_from: maybe(fc.record({ reference: pick(...referenceIds), at: fc.constant('p. 3') })),
    damage: maybe(
      fc.record({
        kind: pick('none', 'dent', 'kink', 'tear', 'bend'),
        found_by: maybe(pick('seen', 'measured')),
      }),
    ),
    operations: maybe(fc.array(operation, { maxLength: 2 })),
  })
  .chain((fixed) => material.map((of) => ({ ...fixed, ...of })));

const millimetres = (place: readonly number[]): readonly string[] =>
  place.map((value) => `${String(value)} mm`);
const place = fc.tuple(
  fc.integer({ min: -900, max: 3500 }),
  fc.integer({ min: -900, max: 900 }),
  fc.integer({ min: -100, max: 1400 }),
);
/** Mostly near its place, as bodies are; a reading far off is drawn with the rest. */
const off = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: -6, max: 6 })));
const placed = fc
  .record({ nominal: place, before: maybe(off), after: maybe(off), far: fc.boolean() })
  .map(({ nominal, before, after, far }) => {
    const read = (way: readonly number[] | undefined): readonly string[] | undefined =>
      way && millimetres(nominal.map((value, axis) => value + (way[axis] ?? 0) * (far ? 90 : 1)));
    return { nominal: millimetres(nominal), before: read(before), after: read(after) };
  });

const pointNames = ['Z1', 'Z2', 'Z3', 'Z4', 'A1'] as const;

const measurements = fc.record({
  system: maybe(pick('optical', 'tape')),
  uncertainty: maybe(amount(0, 4, 'mm')),
  tolerance: maybe(amount(1, 6, 'mm')),
  before: maybe(pick('2026-10-06', '2026-12-01')),
  after: maybe(pick('2026-10-13')),
  zero_points: maybe(fc.subarray([...pointNames, 'nobody'])),
  points: maybe(
    fc.array(
      fc
        .record({
          name: maybe(pick(...pointNames)),
          on: maybe(pick(...partIds)),
          other_side: maybe(pick(...pointNames)),
          dropped_because: maybe(pick('out of reach')),
          placed,
        })
        .map(({ placed: places, ...fixed }) => ({ ...fixed, ...places })),
      { maxLength: 6 },
    ),
  ),
  openings: maybe(
    fc.array(
      fc.record({
        name: maybe(pick('door', 'windscreen')),
        corners: maybe(pick(['Z1', 'Z2', 'Z3', 'A1'], ['Z1', 'Z1', 'Z1', 'Z1'])),
        other_side: maybe(pick('door', 'windscreen')),
        diagonals_before: maybe(fc.tuple(amount(1190, 1210, 'mm'), amount(1190, 1210, 'mm'))),
        diagonals_after: maybe(fc.tuple(amount(1190, 1210, 'mm'), amount(1190, 1210, 'mm'))),
      }),
      { maxLength: 2 },
    ),
  ),
});

const plan = fc
  .record({
    stage: maybe(pick('draft', 'start', 'release')),
    job: maybe(
      fc.constant({
        number: 'K-1',
        opened: '2026-10-05',
        written_by: { name: 'R. Amsel', role: 'estimator' },
      }),
    ),
    vehicle: fc.record({
      maker: maybe(fc.constant('Corvane')),
      model: maybe(fc.constant('Tarn')),
      body: maybe(fc.constant('wagon')),
      model_year: maybe(pick(2018, 2021)),
      market: maybe(pick('european-union', 'united-states')),
      vin: maybe(pick('0CVBAB2BZM0002207', '0CVBABAT6M0002207')),
      drive: maybe(pick('combustion', 'battery-electric', 'mild-hybrid')),
    }),
    references: fc.subarray(references),
    make_safe: maybe(
      fc.record({
        low_voltage: maybe(fc.constant({ planned: true, batteries: ['12 V'] })),
        restraints: maybe(fc.constant({ planned: true, units: [] })),
        high_voltage: maybe(
          fc.constant({ planned: true, battery_condition: 'sound', isolation: { planned: true } }),
        ),
      }),
    ),
    parts: fc.array(part, { minLength: 1, maxLength: partIds.length }),
    // Every other plan: much of them would make every test of whole plans slow.
    measurements: fc.option(measurements, { nil: undefined, freq: 1 }),
  })
  .map((fixed) =>
    stringify(
      { format: 1, ...fixed, parts: fixed.parts.map((one, index) => ({ id: partIds[index], ...one })) },
      { keepUndefined: false, aliasDuplicateObjects: false },
    ),
  );

export const examplePlans: readonly string[] = [
  'ring-replaced-whole',
  'ring-sectioned-by-old-document',
  'rail-heated-near-pillar',
  'door-skin-cosmetic',
  'electric-sill',
  'student-plan',
].map((name) => readFileSync(`examples/plans/${name}.yaml`, 'utf8'));

/** One of the example plans, or one at random. */
export const anyPlan: fc.Arbitrary<string> = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom(...examplePlans) },
  { weight: 2, arbitrary: plan },
);
