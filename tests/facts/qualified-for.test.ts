import { describe, expect, test } from 'vitest';
import { qualifiedFor, unqualifiedWords } from '../../src/facts/papers/qualified-for.ts';
import type { QualifiedWork } from '../../src/generated/plan-types.ts';

const asked = (qualification: string, more: object = {}, day?: string): string =>
  qualifiedFor('high voltage', { name: 'L', qualification, ...more }, day);

// process.md, step 3: a named person with qualification for work on high voltage (29 CFR 1910.399 as model). How papers of several
// countries name such work is from memory.
describe('work on traction voltage', () => {
  test.each([
    'high voltage, level 2',
    'live work on vehicles, certificate 4417',
    'HV-2, no. 4417',
    'No. HV-4417',
    'EV technician, level 3',
    'Fachkundige Person Hochvolt, Stufe 2',
    'Elektrofachkraft für Spannung bis 1000 V',
    'habilitation haute tension',
    'addetto alta tensione',
    'formación en alta tensión',
    'uprawnienia: wysokie napięcie',
    'hoogspanning, vakbekwaam persoon',
    'high voltage, valid until 2027-03',
  ])('%s', (text) => {
    expect(asked(text, {}, '2026-10-05')).toBe('yes');
  });

  test.each(['bodywork diploma', 'resistance welding of panels'])('%s: for other work', (text) => {
    expect(asked(text)).toBe('for other work');
  });

  test.each(['certificate 4417', 'level 2', 'master of the trade', 'high-tensile steel, electric arc'])(
    '%s: not told for what',
    (text) => {
      expect(asked(text)).toBe('not told for what');
    },
  );

  test.each([
    'none',
    '',
    'trained by colleague',
    'high voltage, shown by the foreman',
    'no high-voltage training',
    'high-voltage course booked',
    'high voltage awareness',
    'high voltage, expired 2024',
    'not yet for high voltage',
  ])('%s: no paper', (text) => {
    expect(asked(text)).toBe('none');
  });

  test('run out on the day of the work', () => {
    expect(asked('high voltage, valid until 2026-09-30', {}, '2026-10-01')).toBe('run out');
    expect(asked('high voltage, valid until 2026-09-30', {}, '2026-09-30')).toBe('yes');
    expect(asked('high voltage, valid until 2026-09', {}, '2026-09-30')).toBe('yes');
  });

  test('what the plan says it is for counts more than its text; a role speaks where the paper is a bare number', () => {
    expect(asked('certificate 4417', { for: 'high voltage' })).toBe('yes');
    expect(asked('certificate 4417', { for: ['body structure'] })).toBe('for other work');
    expect(asked('none yet', { for: 'high voltage' })).toBe('none');
    expect(asked('certificate 4417', { role: 'high-voltage technician' })).toBe('yes');
    expect(asked('bodywork diploma', { role: 'high-voltage technician' })).toBe('for other work');
  });
});

test('a release of structure by a paper for the voltage', () => {
  const work: QualifiedWork = 'body structure';
  expect(qualifiedFor(work, { name: 'L', qualification: 'high voltage, level 2' })).toBe('for other work');
  expect(qualifiedFor(work, { name: 'B', qualification: 'body structure level 3' })).toBe('yes');
});

test('in words', () => {
  expect(unqualifiedWords('high voltage', { name: 'T. Holm' })).toBe('T. Holm, no qualification stated');
  expect(unqualifiedWords('high voltage', { name: 'T. Holm', qualification: 'bodywork diploma' })).toBe(
    'T. Holm, “bodywork diploma” (for other work)',
  );
  expect(unqualifiedWords('high voltage', { name: 'L', qualification: 'HV level 2' })).toBeUndefined();
});
