import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../src/plan/check-plan.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';

function check(text: string): ReturnType<typeof checkPlan> {
  const yaml = readYaml(text);
  if (!yaml.ok) throw new Error(yaml.faults[0]?.sentence);
  return checkPlan(yaml.root);
}

function faultsIn(body: string): readonly string[] {
  const checked = check(`format: 1\nvehicle: {}\n${body}`);
  if (!checked.ok) throw new Error(checked.faults[0]?.sentence);
  return checked.faults.map(({ fault, pointer, sentence }) => `${fault} ${pointer} ${sentence}`);
}

describe('a plan that cannot be judged', () => {
  test.each([
    ['a list', '- 1\n', 'block of keys'],
    ['no format', 'vehicle: {}\nparts: []\n', 'no `format`'],
    ['no vehicle', 'format: 1\nparts: []\n', 'no `vehicle`'],
    ['no parts', 'format: 1\nvehicle: {}\n', 'no `parts`'],
    ['format 2', 'format: 2\nvehicle: {}\nparts: []\n', '`format: 1`'],
    ['format in quotes', 'format: "1"\nvehicle: {}\nparts: []\n', '`format: 1`'],
    ['parts that are a block', 'format: 1\nvehicle: {}\nparts: {}\n', 'list of parts'],
    ['parts left empty', 'format: 1\nvehicle: {}\nparts:\n', 'list of parts'],
    ['a vehicle that is a word', 'format: 1\nvehicle: Tarn\nparts: []\n', '`vehicle` must be'],
  ])('%s', (_name, text, said) => {
    const checked = check(text);
    expect(checked.ok).toBe(false);
    if (!checked.ok) expect(checked.faults.map(({ sentence }) => sentence).join(' ')).toContain(said);
  });
});

describe('a text between braces that a comma cut', () => {
  test('is told once, at the first stray key', () => {
    expect(faultsIn('parts: [{ id: a, note: no, it stays, cable on }]')).toEqual([
      'unknown key /parts/0/it stays A comma ended the text of `note` before `it stays`: between braces, put the whole text in quotes.',
    ]);
  });
  test.each([
    ['a key of a block with nothing behind it', 'parts:\n  - note: no\n    it stays:\n'],
    ['a key with its colon', 'parts: [{ note: no, it stays: }]'],
    ['a text in quotes before it', 'parts: [{ note: "no", it stays }]'],
    ['nothing before it', 'parts: [{ it stays, id: a }]'],
  ])('%s is an unknown key', (_name, body) => {
    expect(faultsIn(body)).toEqual([
      expect.stringContaining('`it stays` is not a key that a plan has here.'),
    ]);
  });
});

describe('an entry that cannot be read is told, and is unknown from then on', () => {
  test.each([
    [
      'unknown key',
      'parts: [{ strenght: 1500 MPa }]',
      'unknown key /parts/0/strenght `strenght` is not a key that a plan has here. Nearest known: `strength`.',
    ],
    ['a key people use', 'parts: []\nmaker: X', 'unknown key /maker'],
    [
      'unknown word',
      'parts: [{ operations: [{ do: weldd }] }]',
      'unknown word /parts/0/operations/0/do `weldd` is not a word known here. Nearest known: `weld`.',
    ],
    ['a synonym', 'parts: [{ operations: [{ do: splice }] }]', 'Nearest known: `section`.'],
    ['a synonym of a part', 'parts: [{ kind: rocker }]', 'Nearest known: `sill`.'],
    [
      'a bare number',
      'parts: [{ thickness: 1.4 }]',
      'unreadable quantity /parts/0/thickness "1.4" has no unit',
    ],
    ['a decimal comma', 'parts: [{ thickness: "1,4 mm" }]', 'unreadable quantity /parts/0/thickness'],
    ['a unit of another kind', 'parts: [{ thickness: 600 °C }]', 'unreadable quantity /parts/0/thickness'],
    ['no such date', 'parts: []\njob: { opened: 2026-02-30 }', 'no such date /job/opened'],
    ['a date the other way round', 'parts: []\njob: { opened: 05/10/2026 }', 'no such date /job/opened'],
    [
      'a year with a letter',
      'parts: []\nreferences: [{ covers: { years: 2O21 } }]',
      'no such date /references/0/covers/years',
    ],
    [
      'yes for true',
      'parts: [{ structural: yes }]',
      'wrong kind /parts/0/structural Here stands `yes`; expected is true or false.',
    ],
    ['a list for a word', 'parts: [{ kind: [sill] }]', 'wrong kind /parts/0/kind'],
    [
      'a block for a list',
      'parts: [{ operations: { do: heat } }]',
      'wrong kind /parts/0/operations Here stands a block of keys; expected is a list.',
    ],
    [
      'a year out of range',
      'parts: []\nreferences: []\nmeasurements: {}\nverify: {}\ndamage: {}\nstage: begin',
      'unknown word /stage',
    ],
    [
      'a word in a list of citations',
      'parts: [{ operations: [{ cite: [M1] }] }]',
      'wrong kind /parts/0/operations/0/cite/0',
    ],
    ['a prototype key', 'parts: [{ __proto__: { structural: false } }]', 'unknown key /parts/0/__proto__'],
  ])('%s', (_name, body, expected) => {
    expect(faultsIn(body).join('\n')).toContain(expected);
  });

  test('a text that says nothing is left out, in a list too, and told by whoever needs it', () => {
    for (const nothing of [
      '""',
      '" "',
      '"-"',
      '–',
      '"?"',
      '…',
      '"..."',
      'n/a',
      'N.A.',
      'TBD',
      'to do',
      'unknown',
      'Not known.',
      'to be named',
      'yet to be confirmed',
      'none yet',
      'nobody',
      'N.N.',
      'someone',
      'pending',
    ]) {
      const checked = check(
        `format: 1\nvehicle: { body: ${nothing} }\nparts: [{ note: ${nothing}, operations: [{ do: leave, conditions_met: [kept, ${nothing}] }] }]\nmake_safe: { low_voltage: { planned: ${nothing} } }\n`,
      );
      expect(checked.ok && [nothing, checked.faults, checked.plan]).toEqual([
        nothing,
        [],
        {
          format: 1,
          vehicle: {},
          parts: [{ operations: [{ do: 'leave', conditions_met: ['kept'] }] }],
          make_safe: { low_voltage: {} },
        },
      ]);
    }
  });

  test('a text that says something stays, however short; so does a word or a quantity that says nothing, to be told', () => {
    const checked = check(
      'format: 1\nvehicle: { body: B, trim: na }\nparts: [{ kind: "?", thickness: "-" }]\n',
    );
    expect(checked.ok && checked.plan.vehicle).toEqual({ body: 'B', trim: 'na' });
    expect(checked.ok && checked.faults.map(({ pointer }) => pointer)).toEqual([
      '/parts/0/kind',
      '/parts/0/thickness',
    ]);
  });

  test('a step that is denied in words is no planned step', () => {
    for (const word of ['no', 'No.', 'none', 'not yet', 'off']) {
      expect(faultsIn(`parts: []\nmake_safe: { low_voltage: { planned: ${word} } }`)).toEqual([
        expect.stringMatching(/^wrong kind \/make_safe\/low_voltage\/planned .*written `false`/u),
      ]);
    }
    expect(
      faultsIn('parts: []\nmake_safe: { low_voltage: { planned: No weld before the battery is off } }'),
    ).toEqual([]);
    expect(faultsIn('parts: []\nmake_safe: { low_voltage: { planned: 5 } }')).toEqual([
      'wrong kind /make_safe/low_voltage/planned Here stands `5`; expected is true or false or text.',
    ]);
  });

  test('one fault is told once', () => {
    expect(faultsIn('parts: [{ thickness: 1.4, operations: [{ do: splice, hold: 5 }] }]')).toHaveLength(3);
  });

  test('a list that is too short only because a wrong entry was taken out is not told again', () => {
    expect(faultsIn('parts: []\nmeasurements: { points: [{ nominal: [0 mm, ten, 1 mm] }] }')).toEqual([
      expect.stringMatching(/^unreadable quantity \/measurements\/points\/0\/nominal\/1 /u),
    ]);
    expect(faultsIn('parts: []\nmeasurements: { points: [{ nominal: [0 mm, 1 mm] }] }')).toEqual([
      expect.stringMatching(/^wrong kind \/measurements\/points\/0\/nominal /u),
    ]);
  });

  test('a coordinate with one axis missing is no coordinate', () => {
    const checked = check(
      'format: 1\nvehicle: {}\nparts: []\nmeasurements: { points: [{ name: A, nominal: [0 mm, ~, 1 mm] }] }\n',
    );
    expect(checked.ok && checked.plan.measurements?.points).toEqual([{ name: 'A' }]);
    expect(checked.ok && checked.faults.map(({ pointer }) => pointer)).toEqual([
      '/measurements/points/0/nominal',
    ]);
  });

  test('one wrong entry of a list does not take its neighbours with it', () => {
    const checked = check(
      'format: 1\nvehicle: {}\nparts: [{ under: [a, { b: 1 }, c], damage: { kinds: [dent, dnet, kink] } }]\n',
    );
    expect(checked.ok && checked.plan.parts).toEqual([
      { under: ['a', 'c'], damage: { kinds: ['dent', 'kink'] } },
    ]);
    expect(checked.ok && checked.faults).toHaveLength(2);
  });

  test.each([
    ['a sign-off', 'parts: []\nsign_off: yes', '/sign_off'],
    ['a citation by its bare id', 'parts: [{ operations: [{ cite: M1 }] }]', '/parts/0/operations/0/cite'],
    ['damage in a word', 'parts: [{ damage: dent }]', '/parts/0/damage'],
    ['one neighbour without its list', 'parts: [{ operations: [{ near: { part: a } }] }]', '/near'],
    ['a time in a date', 'parts: []\njob: { opened: 2026-10-05T10:00 }', '/job/opened'],
    ['a number of heatings below one', 'parts: [{ operations: [{ times: 0 }] }]', '/times'],
    ['an id of no letters', 'parts: [{ id: "" }]', '/parts/0/id'],
    ['more text than a key takes', `parts: [{ note: ${'x'.repeat(2001)} }]`, '/parts/0/note'],
    ['more pins than a plan takes', `parts: []\nrules: [${'a@1, '.repeat(21)}]`, '/rules'],
  ])('%s is one fault at its place', (_name, body, pointer) => {
    const faults = faultsIn(body);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`${pointer} `);
  });

  test('what is wrong is taken out and the rest stays', () => {
    const checked = check('format: 1\nvehicle: {}\nparts: [{ id: a, thickness: 1.4, kind: sill }]\n');
    expect(checked.ok && checked.plan.parts).toEqual([{ id: 'a', kind: 'sill' }]);
  });

  test('an operation nobody can read is still an operation', () => {
    const checked = check('format: 1\nvehicle: {}\nparts: [{ operations: [section, { do: heat }] }]\n');
    expect(checked.ok && checked.plan.parts[0]?.operations).toEqual([{}, { do: 'heat' }]);
  });
});

describe('what is no fault', () => {
  test('a key with nothing behind it counts as left out', () => {
    const checked = check('format: 1\nvehicle: { maker: }\njob:\nparts: [{ thickness: , operations: }]\n');
    expect(checked).toMatchObject({ ok: true, faults: [] });
    expect(checked.ok && checked.plan).toEqual({ format: 1, vehicle: {}, parts: [{}] });
  });

  test('a part with nothing behind its dash is a part', () => {
    const checked = check(
      'format: 1\nvehicle: {}\nparts:\n  -\n  - { id: a, operations: [~, { do: heat }] }\n',
    );
    expect(checked).toMatchObject({ ok: true, faults: [] });
    expect(checked.ok && checked.plan.parts).toEqual([{}, { id: 'a', operations: [{}, { do: 'heat' }] }]);
  });

  test('ids that are numbers meet each other as they are written', () => {
    const checked = check(
      'format: 1\nvehicle: {}\nparts: [{ id: 007 }, { id: b, under: 007, over: [1.0] }]\n',
    );
    expect(checked).toMatchObject({ ok: true, faults: [] });
    expect(checked.ok && checked.plan.parts).toEqual([
      { id: '007' },
      { id: 'b', under: '007', over: ['1.0'] },
    ]);
  });

  test('a number where text belongs is read as it is written', () => {
    const checked = check(
      'format: 1\nvehicle: {}\nreferences: [{ revision: 1.10, document: 0042 }]\nparts: []\n',
    );
    expect(checked.ok && checked.plan.references?.[0]).toEqual({ revision: '1.10', document: '0042' });
    expect(checked).toMatchObject({ ok: true, faults: [] });
  });
});
