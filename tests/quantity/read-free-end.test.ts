import { expect, test } from 'vitest';
import { readFreeEnd } from '../../src/quantity/read-free-end.ts';

test.each(['runs on', 'Runs on', '  runs  on '])('%j goes on', (text) => {
  expect(readFreeEnd(text)).toEqual({ ok: true, runsOn: true });
});

test.each([
  ['60 mm', 60],
  ['1 in', 25.4],
])('%s is a length', (text, value) => {
  expect(readFreeEnd(text)).toMatchObject({ ok: true, value });
});

test.each(['run on', 'runs', '60', '-3 mm', ''])('%j is refused', (text) => {
  expect(readFreeEnd(text)).toMatchObject({ ok: false });
});
