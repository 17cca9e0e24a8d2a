import { describe, expect, test } from 'vitest';
import { allRows } from './heat-checks/all-rows.ts';
import { judged } from './heat-checks/check-row.ts';

// The rows of `npm run check:heat`: expected values with their source beside each, in heat-checks/*.json and *.ts, and those of the
// handbook's writer in tests/heat/handbook-checks/*.json.
const rows = allRows();

test('there are as many rows as the files hold', () => {
  expect(rows.length).toBeGreaterThanOrEqual(221);
});

test.each(rows.map((row) => [row.what, row] as const))('%s', (_, row) => {
  const { ok, computed, expected, least, most } = judged(row);
  expect(ok, `${computed} beside ${expected}, allowed ${least} to ${most}`).toBe(true);
});

describe('a row can be out', () => {
  const row = { what: '', source: '', unit: '', expected: 120, computed: 120 } as const;
  test.each([
    [131, 20, false],
    [130, 20, true],
    [118, 20, true],
    [117.9, 20, false],
    [Number.NaN, 20, false],
  ])('%d beside 120 from %d, 10 %% high and 2 %% low', (computed, ambient, ok) => {
    expect(
      judged({ ...row, computed, base: 120 - ambient, allowed: { share: 0.1, lowShare: 0.02 } }).ok,
    ).toBe(ok);
  });
});
