import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textForm } from '../../src/report/forms/text-form.ts';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, placed, planReport, tail } from './invented-report.ts';

const form = (options: Partial<Parameters<typeof textForm>[0]> = {}): ReturnType<typeof textForm> =>
  textForm({ colour: false, columns: 80, quiet: false, mostFindings: 0, summary: false, ...options });
const linesOf = (plan: PlanReport, options = {}): readonly string[] => form(options).plan(plan).split('\n');

describe('one plan', () => {
  test('a cleared plan is its file, what it is, and its verdict in words', () => {
    expect(linesOf(planReport())).toEqual([
      'jobs/K-1.yaml',
      '  Corvane Tarn, job K-1, stage start',
      '  CLEARED: no stops, no holds, no notes.',
      '',
      '',
    ]);
  });

  test('a finding gives sentence, what to do instead, why, what was assumed, place, rule and source', () => {
    const plan = planReport({
      verdict: 'stopped',
      findings: [
        placed(
          {
            rule: 'no-heat',
            severity: 'stop',
            part: 'ring-l',
            partName: 'Door ring, left',
            message: 'The ring reaches 437 °C at 10 mm; its limit is 250 °C.',
            instead: 'Move the heat away.',
            why: 'It tempers.',
            source: 'an invented standard',
            assumptions: ['Nothing measures the heat: 30 K are added.'],
          },
          81,
          15,
        ),
      ],
    });
    expect(linesOf(plan).slice(2, -2)).toEqual([
      '  STOPPED: 1 stop, no holds, no notes.',
      '',
      '  Door ring, left (ring-l)',
      '  STOP The ring reaches 437 °C at 10 mm; its limit is 250 °C.',
      '       Instead: Move the heat away.',
      '       Why: It tempers.',
      '       Assumed: Nothing measures the heat: 30 K are added.',
      '       Line 81, column 15. Rule no-heat of pack invented; source: an invented',
      '         standard.',
    ]);
  });

  test('findings of one part stand under its name once; what is of no part stands under the plan', () => {
    const text = linesOf(
      planReport({
        verdict: 'stopped',
        findings: [
          placed({ rule: 'a', severity: 'hold' }),
          placed({ rule: 'b', severity: 'stop', part: 'p', partName: 'Pillar' }),
          placed({ rule: 'c', severity: 'note', part: 'p', partName: 'Pillar' }),
          placed({ rule: 'd', severity: 'hold', part: 'sill', partName: 'sill' }),
          placed({ rule: 'e', severity: 'hold', part: 'floor' }),
          placed({ rule: 'f', severity: 'hold', partName: 'Roof' }),
        ],
      }),
    );
    expect(text.filter((line) => /^ {2}(?:[A-Z][a-z]|[a-z])/u.test(line))).toEqual([
      '  Corvane Tarn, job K-1, stage start',
      '  The plan and the vehicle',
      '  Pillar (p)',
      '  sill',
      '  floor',
      '  Roof',
    ]);
    expect(text.filter((line) => /^ {2}(?:STOP|HOLD|NOTE) /u.test(line))).toHaveLength(6);
  });

  test('an accepted hold stays visible, with who accepted it until when', () => {
    const deviation = {
      by: 'R. Amsel',
      role: 'master',
      date: '2026-10-07',
      reason: 'The page comes on Monday.',
      expires: '2026-10-30',
    };
    const text = form().plan(planReport({ findings: [placed({ rule: 'a', severity: 'hold', deviation })] }));
    expect(text).toContain('no stops, 1 hold (1 accepted by deviation), no notes.');
    expect(text).toContain(
      'Accepted: by R. Amsel, master, on 2026-10-07, until 2026-10-30: The page\n         comes on Monday.',
    );
  });

  test('what was lifted, by what', () => {
    const lifted = [
      { rule: 'no-cut', pack: 'general', part: 'ring-l', operation: 'section', pointer: '', by: 'D-1, p. 2' },
      { rule: 'no-arc', pack: 'general', pointer: '', by: 'D-2' },
    ];
    expect(linesOf(planReport({ lifted })).slice(3, -2)).toEqual([
      '',
      '  Lifted by the maker’s statement',
      '    no-cut (section of ring-l): D-1, p. 2.',
      '    no-arc: D-2.',
    ]);
  });

  test('what could not be judged is said with its place', () => {
    const plan: PlanReport = {
      file: 'bad.yaml',
      verdict: 'not judged',
      counts: { stop: 0, hold: 0, note: 0, accepted: 0 },
      lifted: [],
      findings: [],
      notJudged: [
        { sentence: 'The file is empty.' },
        { sentence: 'No `parts`.', place: { line: 3, column: 9, endLine: 3, endColumn: 12 } },
        { sentence: 'it divides by nothing.', rule: 'odd' },
      ],
    };
    expect(linesOf(plan)).toEqual([
      'bad.yaml',
      '  NOT JUDGED: see below.',
      '',
      '  The file is empty.',
      '',
      '  Line 3, column 9: No `parts`.',
      '',
      '  Rule odd could not be asked: it divides by nothing.',
      '',
      '',
    ]);
  });

  test('at 80 columns no line is wider, whatever is written, but for a single long word', () => {
    const words = fc.array(fc.stringMatching(/^[a-zA-Zäöü0-9.,]{1,20}$/u), { minLength: 1, maxLength: 60 });
    const text = words.map((list) => list.join(' '));
    fc.assert(
      fc.property(
        text,
        text,
        text,
        fc.array(text, { maxLength: 2 }),
        (message, name, source, assumptions) => {
          const plan = planReport({
            title: message,
            notJudged: [{ sentence: name, rule: source }],
            lifted: [
              { rule: 'no-cut', pack: 'general', part: name, operation: 'section', pointer: '', by: source },
            ],
            findings: [
              placed({
                ...{
                  rule: 'a',
                  severity: 'hold',
                  part: 'p',
                  partName: name,
                  message,
                  instead: source,
                  why: message,
                },
                ...{ source, assumptions, severity: 'hold' },
              }),
            ],
          });
          expect(linesOf(plan).filter((line) => line.length > 80)).toEqual([]);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('a name with control characters and line ends in it stays one piece of text', () => {
    const plan = planReport({
      file: 'a\u001b[2J.yaml',
      title: 'Tarn\n  CLEARED: no stops',
      findings: [placed({ rule: 'a', severity: 'hold', message: 'x\u202ey\nz', partName: 'p\r' })],
    });
    const text = form().plan(plan);
    expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(text).not.toMatch(/^ {2}CLEARED: no stops, stage/mu);
    expect(text).toContain('Tarn\\u{000A} CLEARED: no stops, stage start');
    expect(text).toContain('x\\u{202E}y\\u{000A}z');
  });
});

describe('many findings', () => {
  const findings = [
    placed({ rule: 'n', severity: 'note', message: 'Note.' }),
    placed({ rule: 's', severity: 'stop', part: 'p', message: 'Stop.' }),
  ];

  test('the worst are shown, the rest is counted', () => {
    const text = form({ mostFindings: 1 }).plan(planReport({ verdict: 'stopped', findings }));
    expect(text).toContain('  STOP Stop.');
    expect(text).not.toContain('Note.');
    expect(text).toContain('\n\n  1 more finding is not shown: 1 note. --max-findings 0 shows all.\n');
    // What the plan comes to counts all.
    expect(text).toContain('STOPPED: 1 stop, no holds, 1 note.');
  });

  test('totals stand at the end when they are asked for, also of a quiet run', () => {
    const one = form({ summary: true, quiet: true });
    const text =
      one.begin(head) + one.plan(planReport({ findings })) + one.end(tail('cleared', 1, { cleared: 1 }));
    expect(text).toBe(
      'By rule:\n  STOP s of invented: 1 finding in 1 plan\n  NOTE n of invented: 1 finding in 1 plan\nBy folder:\n  jobs: 1 plan, 1 cleared\n\n',
    );
  });
});

// GitHub Actions takes a line that begins with `::`, after blanks, for a command; Azure Pipelines `##vso[` anywhere in it.
test.each(hostileTexts)('%j neither moves the cursor nor speaks to a CI host', (text) => {
  for (const quiet of [true, false]) {
    for (const line of form({ quiet }).plan(hostilePlan(text)).split('\n')) {
      expect(line).not.toMatch(/[\p{Cc}\p{Cf}\u2028\u2029]/u);
      expect(line).not.toMatch(/^\s*::|##\[|##vso\[/u);
    }
  }
});

describe('the end of a run', () => {
  const end = (given: ReturnType<typeof tail>, options = {}): string => {
    const one = form(options);
    return one.begin(head) + one.end(given);
  };

  test('several plans are counted, worst first; packs, versions, digests and the as-of date are named', () => {
    const text = end(tail('not judged', 6, { cleared: 3, held: 1, stopped: 1, 'not judged': 1 }));
    expect(text.split('\n').slice(0, 5)).toEqual([
      '6 plans: 1 stopped, 1 not judged, 1 held, 3 cleared.',
      'Judged as of 2026-10-21 by general 1.0.0 (not released), sha256:aaaaaaaaaaaa;',
      'corvane-tarn 2026.2.0, sha256:bbbbbbbbbbbb; planish 9.8.7, fact schema 1.',
      '',
      expect.stringContaining('planish judges the plan as it is written, not the vehicle.'),
    ]);
  });

  test('the cautions come once, say who decides and name the hazards, at 80 columns', () => {
    const one = form();
    const plans = [planReport(), planReport({ file: 'b.yaml' })];
    const text = one.begin(head) + plans.map(one.plan).join('') + one.end(tail('cleared', 2, { cleared: 2 }));
    for (const said of [
      ...['never says that a', 'current procedure', 'qualified people', 'local law'],
      ...['airbags', 'pretensioners', 'high voltage', 'zinc', 'isocyanates', 'fire', 'stored'],
    ]) {
      expect([said, text.split(said).length - 1 >= 1]).toEqual([said, true]);
    }
    expect(text.match(/Hazards:/gu)).toHaveLength(1);
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(text.endsWith('\n')).toBe(true);
  });

  test('one plan is not counted', () => {
    expect(end(tail('cleared', 1, { cleared: 1 }))).toMatch(/^Judged as of 2026-10-21/u);
  });
});

describe('quiet', () => {
  test('a plan that is cleared only because somebody accepted its hold is told', () => {
    const plan: PlanReport = {
      ...planReport(),
      verdict: 'cleared',
      counts: { stop: 0, hold: 1, note: 0, accepted: 1 },
    };
    expect(form({ quiet: true }).plan(plan)).toBe(
      'jobs/K-1.yaml: cleared, no stops, 1 hold (1 accepted by deviation), no notes\n',
    );
  });

  test('a cleared plan and the end of the run say nothing', () => {
    const one = form({ quiet: true });
    expect(one.begin(head) + one.plan(planReport()) + one.end(tail('cleared', 2, { cleared: 2 }))).toBe('');
  });

  test('any other plan is one line', () => {
    const hold = placed({ rule: 'a', severity: 'hold' });
    expect(form({ quiet: true }).plan(planReport({ verdict: 'held', findings: [hold, hold] }))).toBe(
      'jobs/K-1.yaml: held, no stops, 2 holds, no notes\n',
    );
    const notJudged = [{ sentence: 'The file\nis empty.' }];
    expect(form({ quiet: true }).plan(planReport({ verdict: 'not judged', notJudged }))).toBe(
      'jobs/K-1.yaml: not judged, The file\\u{000A}is empty.\n',
    );
  });
});

describe('colour', () => {
  // ECMA-48, control function SGR.
  // eslint-disable-next-line no-control-regex -- it is about these characters
  const sequences = /\u001b\[[0-9;]*m/gu;
  const plan = planReport({
    verdict: 'stopped',
    findings: (['stop', 'hold', 'note'] as const).map((severity) => placed({ rule: 'a', severity })),
    lifted: [{ rule: 'r', pack: 'general', pointer: '', by: 'D-1' }],
  });

  test('repeats what the words say: without it the text is the same', () => {
    const painted = form({ colour: true }).plan(plan);
    expect(painted).toMatch(sequences);
    expect(painted.replaceAll(sequences, '')).toBe(form().plan(plan));
  });

  test('without it there is no sequence', () => {
    expect(form().plan(plan)).not.toContain('\u001b');
  });

  test.each(['cleared', 'held', 'stopped', 'not judged'] as const)('%s is painted', (verdict) => {
    const painted = form({ colour: true, quiet: verdict !== 'cleared' }).plan(planReport({ verdict }));
    expect(painted).toMatch(sequences);
  });
});
