import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { csvForm } from '../../src/report/forms/csv-form.ts';
import { csv } from '../../src/report/csv.ts';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, placed, planReport, tail } from './invented-report.ts';

type Row = Readonly<Record<string, string>>;

function written(plans: readonly PlanReport[]): string {
  const form = csvForm();
  return form.begin(head) + plans.map(form.plan).join('') + form.end(tail('held', plans.length, {}));
}

/** Read by a strict parser of RFC 4180: rows of one length, CRLF between them. */
function read(plans: readonly PlanReport[]): readonly Row[] {
  return parse<Row>(written(plans), {
    columns: true,
    record_delimiter: '\r\n',
    relax_column_count: false,
  });
}

describe('rows', () => {
  test('one a finding, with its place and rule', () => {
    const findings = [placed({ rule: 'a', severity: 'stop', part: 'p', message: 'One, two' }, 12, 3)];
    expect(read([planReport({ verdict: 'stopped', findings })])).toMatchObject([
      {
        file: 'jobs/K-1.yaml',
        verdict: 'stopped',
        stage: 'start',
        severity: 'stop',
        part: 'p',
        line: '12',
        column: '3',
        message: 'One, two',
        rule: 'a',
        as_of: '2026-10-21',
      },
    ]);
  });

  test('one for a cleared plan, so that every plan is there', () => {
    expect(read([planReport()])).toMatchObject([{ file: 'jobs/K-1.yaml', verdict: 'cleared', severity: '' }]);
  });

  test('one for what could not be judged', () => {
    const notJudged = [{ sentence: 'Empty.' }];
    expect(read([planReport({ verdict: 'not judged', notJudged })])).toMatchObject([
      { severity: 'not judged', message: 'Empty.', as_of: '2026-10-21' },
    ]);
  });

  test('of no plan there is the header', () => {
    expect(written([])).toMatch(/^file,verdict,[a-z_,]+\r\n$/u);
  });
});

// What a spreadsheet takes for a formula gets an apostrophe before it; OWASP, CSV injection (from memory).
const unguarded = (cell: string | undefined): string | undefined => cell?.replace(/^'(?=[^'])/u, '');

test.each(hostileTexts)('%j comes back as it was, and is no formula', (text) => {
  const rows = read([hostilePlan(text)]);
  // A lone surrogate has no UTF-8 form.
  const whole = text.replace(/\p{Surrogate}/gu, '\ufffd');
  expect(rows).toHaveLength(4);
  for (const row of rows) {
    const { file, message } = row;
    expect(file?.startsWith("'") === true ? unguarded(file) : file).toBe(whole);
    expect(unguarded(message)).toBe(whole);
    for (const cell of Object.values(row)) expect(cell).not.toMatch(/^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/u);
  }
});

// RFC 4180, section 2, rules 5 to 7.
test.each([
  ['a,b', '"a,b"'],
  ['a"b', '"a""b"'],
  ['a\nb', '"a\nb"'],
  ['a\rb', '"a\rb"'],
  ['a b', 'a b'],
  [undefined, ''],
  [-1.5, '-1.5'],
])('the cell %j is written %j', (value, written_) => {
  expect(csv([[value, 'x']])).toBe(`${written_},x\r\n`);
});
