import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keepWorst, leftText } from '../../src/report/keep-worst.ts';
import { placed } from './invented-report.ts';

const severities = fc.array(fc.constantFrom('stop' as const, 'hold' as const, 'note' as const), {
  maxLength: 30,
});

test('no milder finding is kept where a worse one is left, none is lost, and the order stays', () => {
  fc.assert(
    fc.property(severities, fc.integer({ min: 1, max: 30 }), (given, most) => {
      const findings = given.map((severity, index) => placed({ rule: String(index), severity }));
      const { kept, left } = keepWorst(findings, most);
      expect(kept).toHaveLength(Math.min(most, findings.length));
      expect(kept.length + left.stop + left.hold + left.note).toBe(findings.length);
      const order = kept.map(({ finding }) => Number(finding.rule));
      expect(order).toEqual(order.toSorted((a, b) => a - b));
      const has = (severity: string): boolean => kept.some(({ finding }) => finding.severity === severity);
      if (left.stop > 0) expect(has('hold') || has('note')).toBe(false);
      if (left.hold > 0) expect(has('note')).toBe(false);
    }),
  );
});

test('0 keeps all', () => {
  const findings = [placed({ rule: 'a', severity: 'note' })];
  expect(leftText(keepWorst(findings, 0))).toBeUndefined();
});

test('what is left is counted in words', () => {
  const findings = (['stop', 'hold', 'hold', 'note'] as const).map((severity) =>
    placed({ rule: 'a', severity }),
  );
  expect(leftText(keepWorst(findings, 1))).toBe('3 more findings are not shown: 2 holds, 1 note.');
  expect(leftText(keepWorst(findings, 3))).toBe('1 more finding is not shown: 1 note.');
});
