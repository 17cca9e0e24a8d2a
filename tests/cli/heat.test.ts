import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, test } from 'vitest';
import { lineOf } from '../one-change.ts';
import { runPlanish } from './run-planish.ts';
import type { RunOptions, RunResult } from './run-planish.ts';

const schema: object = JSON.parse(readFileSync('schemas/heat.schema.json', 'utf8'));
const validate = new Ajv2020({ strict: true, strictRequired: false, allErrors: true }).compile(schema);
const folder = mkdtempSync(path.join(tmpdir(), 'planish heat '));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const heat = (args: readonly string[], options: RunOptions = {}): RunResult =>
  runPlanish(['heat', ...args], options);
const torch = ['--source', 'torch', '--temperature', '600C', '--hold', '30s', '--sheet', '1.2mm'];
const rail = [
  ...[
    '--source',
    'induction',
    '--temperature',
    '600 °C',
    '--measured-by',
    'temperature crayon',
    '--hold',
    '60s',
  ],
  ...['--times', '1', '--sheet', '1.2 mm', '--metal', 'high-strength', '--edge', 'runs on'],
];
const near = (what: string): readonly string[] => ['--near', what];

interface Exposure {
  readonly distance: { readonly value: number };
  readonly peak: { readonly value: number } | null;
  readonly time_above_limit: { readonly value: number } | null;
  readonly tensile_left: number | null;
  readonly verdict: string;
  readonly reason?: string;
  readonly longest_hold?: { readonly value: number | null };
  readonly highest_temperature?: { readonly value: number | null; readonly reason?: string };
}

interface Answer {
  readonly stay_clear: { readonly value: number } | null;
  readonly reason?: string;
  readonly source: { readonly counted: { readonly value: number }; readonly times: number };
  readonly sheet: { readonly metal: string };
  readonly near: { readonly victim: string };
  readonly limit: { readonly source: string | null };
  readonly assumptions: readonly string[];
  readonly exposures: readonly Exposure[];
}

function json(args: readonly string[]): Answer {
  const { stdout, stderr, status } = heat([...args, '--format', 'json']);
  if (status !== 0) throw new Error(stderr);
  const answer: Answer = JSON.parse(stdout);
  expect(validate(answer), JSON.stringify(validate.errors)).toBe(true);
  return answer;
}

describe('planish heat without a plan', () => {
  test('says first, in one sentence, how far to stay away, with the limit and its source', () => {
    const { stdout, status, stderr } = heat([...torch, ...near('press-hardened')]);
    expect([status, stderr]).toEqual([0, '']);
    const [first = ''] = stdout.split('\n\n');
    expect(first.replaceAll('\n', ' ')).toMatch(
      /^Stay \d+ mm clear: .*press-hardened.* 200 °C.*pack general \d+\.\d+\.\d+: common practice.*\.$/u,
    );
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('every default that was taken is named', () => {
    const { assumptions } = json([...torch, ...near('press-hardened')]);
    for (const named of [
      /torch that nobody measures counts as 900 °C/u,
      /two are taken/u,
      /mild steel, the best conductor/u,
      /No free end/u,
      /strip/u,
      /zone 40 mm/u,
      /[Ee]missivity 0\.3 .*zinc/u,
      /8 W\/m²K/u,
      /20 °C/u,
    ])
      expect(assumptions.filter((one) => named.test(one))).toHaveLength(1);
    const all = json([
      ...rail,
      ...near('press-hardened'),
      ...[
        '--edge',
        '200mm',
        '--shape',
        'strip',
        '--convection',
        '8',
        '--emissivity',
        '0.3',
        '--ambient',
        '20C',
      ],
    ]);
    expect(all.assumptions.join(' ')).not.toMatch(
      /mild|two are|free end|[Ee]missivity|W\/m²K|Surroundings|Shape/u,
    );
  });

  test('--at chooses the distances; the numbers are those that check computes for the same heat', () => {
    const { exposures, source } = json([...rail, ...near('press-hardened'), '--at', '40mm,10mm,80mm']);
    expect(exposures.map(({ distance }) => distance.value)).toEqual([40, 10, 80]);
    // Contact and crayon 20 K: handbook/heat.md, section 8.
    expect(source.counted.value).toBe(620);
    const report = runPlanish([
      ...[
        'check',
        '--as-of',
        '2026-10-21',
        '--format',
        'json',
        'examples/plans/rail-heated-near-pillar.yaml',
      ],
    ]).stdout;
    const peak = /"name": "exposure\.peak",\s*"value": ([\d.]+)/u.exec(report)?.[1];
    expect(exposures[1]?.peak?.value).toBeCloseTo(Number(peak), 1);
  });

  test('where a distance is asked for, also the longest hold and the highest temperature', () => {
    const clear = json([...rail, ...near('press-hardened')]).stay_clear?.value ?? Number.NaN;
    const at = `10mm,${String(clear - 1)}mm,${String(clear)}mm,80mm`;
    const { exposures } = json([...rail, ...near('press-hardened'), '--at', at]);
    const [tight, broken, kept, far] = exposures;
    expect(tight?.longest_hold?.value ?? 0).toBeLessThan(20);
    expect(broken?.longest_hold?.value).toBeLessThan(60);
    expect(kept?.longest_hold?.value).toBeGreaterThanOrEqual(60);
    expect(broken?.highest_temperature?.value).toBeLessThan(600);
    expect(kept?.highest_temperature?.value).toBeGreaterThanOrEqual(600);
    expect(far?.highest_temperature?.value).toBeGreaterThan(kept?.highest_temperature?.value ?? Infinity);
    // A torch that nobody measures gets no colder by what is stated of it.
    const [unmeasured] = json([...torch, ...near('press-hardened'), '--at', '40mm']).exposures;
    expect(unmeasured?.highest_temperature).toMatchObject({
      value: null,
      reason: expect.stringContaining('900 °C'),
    });
  });

  test('what cannot be computed is null with a reason', () => {
    const {
      exposures,
      stay_clear: clear,
      reason,
    } = json([...torch, ...near('structural adhesive'), ...['--edge', '60mm', '--at', '40mm,80mm']]);
    expect(clear).toBeNull();
    expect(reason).toMatch(/free end .* 60 mm/u);
    expect(exposures[0]).toMatchObject({
      tensile_left: null,
      reason: expect.stringContaining('No model tells'),
    });
    expect(exposures[1]).toMatchObject({
      peak: null,
      time_above_limit: null,
      reason: expect.stringContaining('free end'),
    });
    expect(json([...torch, ...near('mild')])).toMatchObject({
      stay_clear: null,
      reason: expect.stringContaining('no limit for plain steel'),
    });
  });

  test('units: 600C, "600 °C", 1112F and 1112 °F are one; a bare number is refused with the units', () => {
    const at = (temperature: string): number | undefined =>
      json([...rail, ...near('press-hardened'), '--temperature', temperature]).stay_clear?.value;
    const same = at('600 °C');
    expect(same).toBeGreaterThan(0);
    expect([at('600C'), at('1112F'), at('1112 °F'), at('600degC')]).toEqual([same, same, same, same]);
    const { status, stderr } = heat([...rail, ...near('press-hardened'), '--temperature', '600']);
    expect(status).toBe(2);
    expect(stderr).toMatch(/--temperature.*no unit.*°C, °F or K/u);
  });

  test.each([
    ['press-hardened', 'hardened or multi-phase steel'],
    ['22MnB5+AS150', 'hardened or multi-phase steel'],
    ['advanced high-strength', 'hardened or multi-phase steel'],
    // A word that some use for press-hardened steel too counts as the strongest that it can be.
    ['HSS', 'hardened or multi-phase steel'],
    ['high-strength', 'plain steel'],
    ['aluminium', 'aluminium'],
    ['structural adhesive', 'structural adhesive'],
    ['wax', 'cavity wax'],
    ['Airbag', 'airbag'],
  ])('beside %s it is %s that counts', (word, victim) => {
    expect(json([...torch, ...near(word)]).near.victim).toBe(victim);
  });

  test('no temperature makes an airbag harmless: the distance is the rule’s', () => {
    const { stay_clear: clear, limit } = json([...torch, ...near('airbag')]);
    expect(clear?.value).toBe(300);
    expect(limit.source).toBeNull();
    expect(heat([...torch, ...near('airbag')]).stdout).toMatch(/^Stay 300 mm clear .*take it off/u);
    // Of both a limit and a rule the farther counts.
    expect(json([...torch, ...near('high-voltage cable')]).stay_clear?.value).toBe(300);
  });

  test('worse heats never come nearer', () => {
    const clear = (...more: readonly string[]): number =>
      json([...rail, ...near('press-hardened'), ...more]).stay_clear?.value ?? Infinity;
    const base = clear();
    expect(clear('--temperature', '700C')).toBeGreaterThan(base);
    expect(clear('--hold', '120s')).toBeGreaterThan(base);
    expect(clear('--times', '3')).toBeGreaterThan(base);
    expect(clear('--sheet', '2mm')).toBeGreaterThan(base);
    expect(clear('--metal', 'mild')).toBeGreaterThan(base);
    expect(clear('--emissivity', '0.9')).toBeLessThan(base);
    expect(clear('--convection', '25 W/m²K')).toBeLessThan(base);
    expect(clear('--shape', 'disc', '--radius', '15mm')).toBeLessThanOrEqual(base);
  });

  test('as CSV: one row a distance, quoted as RFC 4180 asks', () => {
    const { stdout } = heat([...torch, ...near('paint'), '--at', '10mm,20mm', '--format', 'csv']);
    const rows = stdout.split('\r\n');
    expect(rows).toHaveLength(4);
    expect(rows[3]).toBe('');
    expect(rows[0]?.split(',')).toContain('stay_clear_mm');
    for (const row of rows.slice(0, 3)) expect(row.split(',')).toHaveLength(18);
  });

  test('the answer is the same to the byte from run to run', () => {
    const once = heat([...torch, ...near('press-hardened'), '--format', 'json']).stdout;
    expect(heat([...torch, ...near('press-hardened'), '--format', 'json']).stdout).toBe(once);
  });
});

describe('what is wrong is said in sentences that name the option and the plausible range', () => {
  const good = new Map([
    ['--source', 'torch'],
    ['--temperature', '600C'],
    ['--hold', '30s'],
    ['--sheet', '1.2mm'],
    ['--near', 'press-hardened'],
  ]);
  const withOption = (option: string, value: string): readonly string[] =>
    [...new Map(good).set(option, value)].flat();

  test.each([
    ['--temperature', '3000C', /30 to 1200 °C/u],
    ['--temperature', '0C', /30 to 1200 °C/u],
    ['--temperature', '-300C', /30 to 1200 °C/u],
    ['--temperature', 'NaN', /30 to 1200 °C/u],
    ['--temperature', '', /30 to 1200 °C/u],
    ['--temperature', '600 K extra', /30 to 1200 °C/u],
    ['--hold', '0s', /0\.5 to 3600 s/u],
    ['--hold', '-5s', /0\.5 to 3600 s/u],
    ['--hold', '1 µs', /0\.5 to 3600 s/u],
    ['--hold', '3 days', /0\.5 to 3600 s/u],
    ['--hold', '31min', /3600 s in all/u],
    ['--hold', '30', /s, min, h/u],
    ['--sheet', '12mm', /0\.4 to 6 mm/u],
    ['--sheet', '1um', /0\.4 to 6 mm/u],
    ['--sheet', '0mm', /0\.4 to 6 mm/u],
    ['--sheet', '-1mm', /0\.4 to 6 mm/u],
    ['--sheet', '1.2', /mm, cm/u],
    ['--at', '10km', /0 to 20000 mm/u],
    ['--at', '10000m', /0 to 20000 mm/u],
    ['--at', '20mm,,40mm', /0 to 20000 mm/u],
    ['--at', '20', /no unit/u],
    ['--times', '0', /1 to 100/u],
    ['--times', '1.5', /1 to 100/u],
    ['--times', 'twice', /1 to 100/u],
    ['--times', 'NaN', /1 to 100/u],
    ['--times', '1e9', /1 to 100/u],
    ['--edge', '0mm', /1 to 20000 mm/u],
    ['--radius', '15mm', /--shape disc/u],
    ['--shape', 'disc', /--radius/u],
    ['--shape', 'square', /strip or disc/u],
    ['--convection', '1000', /3 to 100/u],
    ['--emissivity', '30 %', /0 to 1/u],
    ['--ambient', '200C', /-30 to 50 °C/u],
    ['--source', 'blowtorch', /torch/u],
    ['--source', '', /torch/u],
    ['--measured-by', 'a guess', /temperature crayon/u],
    ['--near', 'press hardend', /press-hardened/u],
    ['--near', '', /press-hardened/u],
    ['--near', 'airbags and wax', /airbag/u],
    ['--metal', 'wood', /mild/u],
  ])('%s %j', (option, value, range) => {
    const { status, stdout, stderr } = heat(withOption(option, value));
    expect([status, stdout]).toEqual([2, '']);
    const lines = stderr.trimEnd().split('\n');
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/^planish: /u);
    expect(lines[0]).toContain(option);
    expect(lines[0]).toMatch(range);
  });

  test.each([...good.keys()].filter((option) => option !== '--temperature'))('%s absent', (option) => {
    const { status, stderr } = heat([...good].filter(([key]) => key !== option).flat());
    expect(status).toBe(2);
    expect(stderr).toContain(`${option} is missing`);
  });

  test('a temperature may be absent only for a torch that nobody measures, which counts as 900 °C anyway', () => {
    const less = [...good].filter(([key]) => key !== '--temperature').flat();
    expect(json(less).source.counted.value).toBe(900);
    expect(heat([...less, '--measured-by', 'contact probe']).stderr).toContain('--temperature is missing');
    expect(heat([...less, '--source', 'induction']).stderr).toContain('--temperature is missing');
  });

  test('every fault is told at once', () => {
    const { stderr } = heat([
      '--source',
      'x',
      '--temperature',
      '9',
      '--hold',
      '9',
      '--sheet',
      '9',
      '--near',
      'x?',
    ]);
    expect(stderr.trimEnd().split('\n')).toHaveLength(5);
  });

  test('beyond the engine’s own range its reason is told', () => {
    const { status, stderr } = heat([...withOption('--sheet', '5mm'), '--metal', 'mild']);
    expect(status).toBe(2);
    expect(stderr).toMatch(/thickness 5 mm .*0\.4 to 4 mm/u);
    expect(heat([...rail, ...near('wax'), '--metal', 'composite'])).toMatchObject({ status: 2, stdout: '' });
  });

  test('a quantity that the shell has cut in two is not taken for a plan', () => {
    const { status, stderr } = heat(['--source', 'torch', '--temperature', '600', '°C', ...near('wax')]);
    expect(status).toBe(2);
    expect(stderr).toContain('in quotes');
  });

  test.each(['--near', '--source', '--metal', '--times', '--hold', '--at', '--emissivity'])(
    '%s of ten thousand letters is told in a short sentence',
    (option) => {
      const { status, stderr } = heat(withOption(option, '9x'.repeat(5000)));
      expect(status).toBe(2);
      expect(stderr.length).toBeLessThan(700);
    },
  );

  test('text that would move the cursor is shown, not sent', () => {
    expect(heat(withOption('--near', '\u001b[2Jx')).stderr).not.toContain('\u001b');
  });
});

describe('planish heat with plans', () => {
  const plan = 'examples/plans/rail-heated-near-pillar.yaml';

  test('shows each heat, its neighbours with verdict and stay-clear distance, and a picture', () => {
    const { stdout, status } = heat([plan]);
    expect(status).toBe(1);
    const line = lineOf(readFileSync(plan, 'utf8'), 'do: heat');
    expect(stdout).toContain(`Front rail, right, heating, line ${String(line)}`);
    expect(stdout.replaceAll(/\s+/gu, ' ')).toMatch(
      /OVER ITS STOP LIMIT: A-pillar, right \(hardened or multi-phase steel\) at 10 mm reaches \d{3} °C/u,
    );
    expect(stdout).toMatch(/mm from the edge of the heated zone/u);
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('the same distance as without a plan', () => {
    const { stay_clear: clear } = json([...rail, ...near('press-hardened')]);
    expect(heat([plan]).stdout).toContain(`Stay ${String(clear?.value)} mm clear.`);
  });

  const moved = (from: string, to: string): string => readFileSync(plan, 'utf8').replace(from, to);

  test.each([
    ['at 40 mm the pillar keeps its limit', 'distance: 10 mm', 'distance: 40 mm', 0],
    ['a distance that is left out is not known', 'distance: 10 mm, ', '', 1],
    ['through air is not known', 'path: joined', 'path: through air', 1],
    ['a hold that is left out is not known', '        hold: 60 s\n', '', 1],
    ['a thickness that is left out is not known', 'thickness: 1.2 mm\n    joined_to', 'joined_to', 1],
    [
      'an airbag at 40 mm that stays is too near',
      'part: a-pillar-r, distance: 10 mm',
      'item: airbag, distance: 40 mm',
      1,
    ],
    [
      'neighbours that are left out are not known',
      '{ part: a-pillar-r, distance: 10 mm, path: joined }',
      '',
      1,
    ],
  ])('%s', (_name, from, to, status) => {
    const text = moved(from, to);
    expect(text).not.toBe(readFileSync(plan, 'utf8'));
    expect(heat(['-'], { input: text }).status).toBe(status);
  });

  test('as JSON and as CSV', () => {
    const { stdout, status } = heat([plan, 'examples/plans/student-plan.yaml', '--format', 'json']);
    const report: {
      readonly plans: readonly { readonly heats: readonly { readonly exposures: readonly Exposure[] }[] }[];
    } = JSON.parse(stdout);
    expect(status).toBe(1);
    expect(validate(report), JSON.stringify(validate.errors)).toBe(true);
    expect(report.plans[0]?.heats[0]?.exposures[0]).toMatchObject({
      distance: { value: 10, unit: 'mm' },
      verdict: 'over its stop limit',
      stay_clear: json([...rail, ...near('press-hardened')]).stay_clear,
    });
    const rows = heat([plan, '--format', 'csv']).stdout.split('\r\n');
    expect(rows[1]).toContain('"Front rail, right"');
  });

  test('a seam is shown with its peak, and the ring that lies beside it keeps its limit', () => {
    const { stdout, status } = heat(['examples/plans/ring-replaced-whole.yaml', '--format', 'csv']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/,arc,.*within its limit/u);
  });

  test('the bake of a car with a traction battery is a heat', () => {
    const { stdout } = heat(['examples/plans/electric-sill.yaml', '--format', 'json']);
    expect(validate(JSON.parse(stdout)), JSON.stringify(validate.errors)).toBe(true);
    const baked = moved('drive: combustion', 'drive: battery-electric').replace(
      'finish:\n',
      'finish:\n  bake: { temperature: 80 °C, time: 30 min }\n',
    );
    const { stdout: shown, status } = heat(['-'], { input: baked });
    expect(status).toBe(1);
    expect(shown.replaceAll(/\s+/gu, ' ')).toMatch(/OVER ITS STOP LIMIT: the traction battery .*80 °C/u);
  });

  test.each([
    ['not YAML', ': ['],
    ['no plan', 'format: 1\n'],
    ['another pack', readFileSync(plan, 'utf8').replace('general@3', 'nobody@1')],
  ])('%s is not judged', (_name, input) => {
    const { status, stdout } = heat(['-'], { input });
    expect(status).toBe(2);
    expect(stdout).toContain('Not judged');
  });

  test('a plan that is not there, and one beside the options of a question', () => {
    expect(heat(['nowhere.yaml']).status).toBe(2);
    expect(heat([plan, '--source', 'torch'])).toMatchObject({ status: 2, stdout: '' });
  });
});

describe('--svg', () => {
  const file = path.join(folder, 'heat.svg');

  test('writes one picture, and nothing over a file that is there', () => {
    expect(heat([...torch, ...near('wax'), '--svg', file]).status).toBe(0);
    const written = readFileSync(file, 'utf8');
    expect(written).toMatch(/^<\?xml .*\n<svg [^>]*role="img"/u);
    writeFileSync(file, 'mine');
    const refused = heat([...torch, ...near('wax'), '--svg', file]);
    expect(refused.status).toBe(2);
    expect(refused.stderr).toMatch(/--svg: .* is there already.*--force/u);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect(heat([...torch, ...near('wax'), '--svg', file, '--force']).status).toBe(0);
    expect(readFileSync(file, 'utf8')).toBe(written);
  });

  test('of a plan: its heats, or a sentence where there is none to draw', () => {
    const drawn = path.join(folder, 'plan.svg');
    expect(heat(['examples/plans/rail-heated-near-pillar.yaml', '--svg', drawn]).status).toBe(1);
    expect(readFileSync(drawn, 'utf8')).toContain('A-pillar, right');
    const none = heat(['examples/plans/door-skin-cosmetic.yaml', '--svg', path.join(folder, 'none.svg')]);
    expect(none.status).toBe(2);
    expect(none.stderr).toContain('no heat of which a picture');
  });

  test('a folder that is not there is told', () => {
    const { status, stderr } = heat([...torch, ...near('wax'), '--svg', path.join(folder, 'no/x.svg')]);
    expect([status, stderr.includes('its folder is not there')]).toEqual([2, true]);
  });
});
