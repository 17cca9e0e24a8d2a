import { describe, expect, test } from 'vitest';
import { runPlanish } from './run-planish.ts';

describe('planish steel', () => {
  test.each([
    [['22MnB5+AS150'], 0],
    [['22MnB5+AS150', 'DC04', 'DP 980', '6016-T4', 'CR590Y980T-DP', 'HC340LA+Z'], 0],
    [['boron'], 0],
    [['590 MPa'], 1],
    [['CR4'], 1],
    [['UHSS'], 1],
    [['1.5 GPa'], 1],
    [['600'], 1],
    [['1500P'], 1],
    [['HCT98X'], 1],
    [['22MnB5', 'HCT98X'], 1],
    [[''], 2],
    [['DC04 or HC260LA'], 2],
    [['<b>DC04</b>'], 2],
    [['DС04'], 2],
    [['X'.repeat(10_240)], 2],
    [['22MnB5', 'HCT98X', ''], 2],
    [[], 2],
    [['DC04', '--format', 'xml'], 2],
  ] as const)('%j gives status %d', (args, status) => {
    expect(runPlanish(['steel', ...args]).status).toBe(status);
  });

  test('as JSON: one object a designation, in the order given, whatever the status', () => {
    const { stdout, status } = runPlanish([
      'steel',
      '--format',
      'json',
      '22MnB5+AS150',
      '',
      'UHSS',
      'HCT98X',
    ]);
    const answers: readonly Readonly<Record<string, unknown>>[] = JSON.parse(stdout);
    expect(status).toBe(2);
    expect(answers.map(({ given, known, class: counts }) => [given, known, counts])).toEqual([
      ['22MnB5+AS150', 'known', 'press-hardened'],
      ['', 'unknown', null],
      ['UHSS', 'ambiguous', 'press-hardened'],
      ['HCT98X', 'unknown', null],
    ]);
    for (const answer of answers) {
      const keys = [
        'given',
        'known',
        'class',
        'family',
        'tensile',
        'yield',
        'coating',
        'standard',
        'mark',
        'readings',
        'reason',
      ];
      expect(Object.keys(answer)).toEqual(expect.arrayContaining(keys));
      expect(Object.keys(answer).sort()).toEqual(Object.keys(answers[0] ?? {}).sort());
    }
  });

  test('the rules on a material are those of the pack, by id', () => {
    const { stdout } = runPlanish(['steel', '--format', 'json', '22MnB5', 'DC04', 'HC340', 'CR4', 'CR340LA']);
    const answers: readonly { readonly rules: readonly string[] }[] = JSON.parse(stdout);
    const [ring = [], skin = [], open = [], unsure = [], shared = []] = answers.map(({ rules }) => rules);
    expect(ring).toEqual(
      expect.arrayContaining(['heat-press-hardened', 'section-press-hardened', 'arc-on-hardened-steel']),
    );
    expect(ring).toContain('neighbour-too-hot');
    expect(skin).not.toContain('heat-press-hardened');
    expect(open).toContain('structural-strength-unknown');
    expect(unsure).toContain('ambiguous-material-worked');
    expect(shared).not.toContain('ambiguous-material-worked');
  });

  test('without a designation JSON is printed too, and the complaint beside it', () => {
    const { stdout, stderr, status } = runPlanish(['steel', '--format', 'json']);
    expect([JSON.parse(stdout), status]).toEqual([[], 2]);
    expect(stderr).toContain('name a designation');
    expect(runPlanish(['steel'])).toMatchObject({ stdout: '', status: 2 });
  });

  test('the text says what rules say, without taking it back', () => {
    const { stdout } = runPlanish(['steel', 'HCT780X']);
    expect(stdout).toContain('says of advanced high-strength parts');
    expect(stdout).not.toContain('may permit it');
    expect(runPlanish(['steel', 'HC340']).stdout).toContain('says of parts whose strength is not known');
  });

  test('--find names what a misspelt one resembles', () => {
    expect(runPlanish(['steel', '--find', '22MNB']).stdout).toContain('22MnB5');
    expect(runPlanish(['steel', '--help']).stdout).toContain('--find');
  });

  test('the text is without colour when it does not go to a terminal', () => {
    // eslint-disable-next-line no-control-regex -- the sign by which colours begin
    expect(runPlanish(['steel', 'DC04']).stdout).not.toMatch(/\u001b/u);
  });
});

describe('a grade in a plan', () => {
  const plan = (grade: string): string => `format: 1
stage: start
vehicle: { maker: Corvane, model: Tarn }
parts:
  - id: pillar
    kind: b-pillar
    grade: ${JSON.stringify(grade)}
    operations: [{ do: heat, temperature: 600 °C }]
`;
  const check = (grade: string): ReturnType<typeof runPlanish> =>
    runPlanish(['check', '--format', 'json', '--as-of', '2026-10-21', '-'], { input: plan(grade) });
  const rulesOf = (grade: string): readonly string[] => {
    const report: { readonly plans: readonly { readonly findings: readonly { readonly rule: string }[] }[] } =
      JSON.parse(check(grade).stdout);
    return report.plans.flatMap(({ findings }) => findings.map(({ rule }) => rule));
  };

  test.each(['CR4', 'UHSS', 'HSS', '600', '980', '1.5 GPa', 'JSC1470Y', '1500P', 'CR290Y490T-GI-E', 'DP890'])(
    'an ambiguous one (%s) on a pillar that is heated is asked about',
    (grade) => {
      expect(check(grade).status).toBe(1);
      expect(rulesOf(grade)).toContain('ambiguous-material-worked');
    },
  );

  test.each(['HC340', 'HCT98OX', 'CR980Y700T-DP', 'DC04 or 22MnB5', 'DС04', '', 'XQ-17', '<i>DC04</i>'])(
    'one that is none (%j) on a pillar that is heated is stopped',
    (grade) => {
      expect(check(grade).status).toBe(1);
      expect(rulesOf(grade)).toContain('structural-strength-unknown');
    },
  );

  test('a sure one is not asked about', () => {
    expect(rulesOf('HC340LA')).not.toContain('ambiguous-material-worked');
    expect(rulesOf('22MnB5+AS150')).not.toContain('ambiguous-material-worked');
    expect(rulesOf('22MnB5+AS150')).toContain('heat-press-hardened');
  });
});
