import { describe, expect, test } from 'vitest';
import { admitsNotLooked, saysNotLooked } from '../../src/plan/not-looked.ts';

// What people write who did not look, and what those write who did: common practice, said by a person of the trade.

const refusals = [
  ...[
    'none looked at',
    'None looked for',
    'n/a - did not check',
    'not checked yet',
    'Not yet checked',
    'not checked',
  ],
  ...[
    'none, not checked',
    'None – nobody looked',
    'nothing looked at',
    'nothing checked so far',
    'Not inspected',
  ],
  ...[
    'has not been looked at',
    'have not looked yet',
    'haven’t looked',
    "didn't check",
    'did not look inside',
  ],
  ...[
    'could not check it',
    'was not inspected because the trim is on',
    'no check made',
    'No inspection',
    'no check',
  ],
  ...[
    'unchecked',
    'still unchecked',
    'to be checked',
    'still to be looked at',
    'will be checked later',
    'to check',
  ],
  ...[
    'inspection pending',
    'awaiting inspection',
    'check to follow',
    'skipped',
    'none assumed',
    'presumably none',
  ],
  ...[
    'assumed sound',
    'probably fine',
    'None expected, not looked at',
    'not yet',
    'not done yet',
    'nobody has looked',
  ],
  ...[
    'no - not tested',
    'not applied yet',
    'n/a, not tested',
    'not looked into until the panel is off',
    'not scanned',
  ],
];

const answers = [
  ...[
    'none found',
    'none found, boroscope, both cavities',
    'none found after cutting back',
    'None seen',
    'none',
  ],
  ...[
    'nothing found',
    'none known',
    'no damage',
    'none at this part; front hit',
    'not found',
    'checked',
    'in order',
  ],
  ...['None found; not by eye alone but by boroscope', 'Checked by boroscope, no opening left unchecked'],
  ...['not damaged', 'Not on the sill', 'no cracks, dye test', 'none noted', 'none read', 'Tested, no fault'],
  ...[
    'All looked at and pulled through, in order',
    'Not yet driven; all looked at',
    'nothing left unchecked',
  ],
  ...['not checked by eye but by boroscope', 'not only looked at but measured', 'Left front belt replaced'],
  ...[
    'No test piece needed',
    'Scan shows none',
    'none, checked twice',
    'tested to 30 Nm',
    'no codes',
    'not required',
  ],
  ...[
    'To be fitted by the page',
    'Test coupon torn',
    'Inspection lamp and mirror used, none found',
    'unknown colour',
  ],
];

test.each(refusals)('"%s" says that nobody looked', (text) => {
  expect(saysNotLooked(text)).toBe(true);
  expect(admitsNotLooked(text)).toBe(true);
});

test.each(answers)('"%s" is an answer', (text) => {
  expect(saysNotLooked(text)).toBe(false);
  expect(admitsNotLooked(text)).toBe(false);
});

describe('part of it', () => {
  test.each([
    ...[
      'none found on the left, right side not looked at',
      'in order; rear belts not checked yet',
      'none found (roof unchecked)',
    ],
    ...[
      'None found. Floor seams were not inspected.',
      'left sill by boroscope, the right one has not been looked at',
    ],
  ])('"%s" admits that something was not looked at', (text) => {
    expect(admitsNotLooked(text)).toBe(true);
    expect(saysNotLooked(text)).toBe(false);
  });

  test.each([
    ...[
      'left belt not tested, replaced',
      'rear seat not checked at first, then all in order',
      'none found, dents not measured by hand',
    ],
  ])('"%s" does not', (text) => {
    expect(admitsNotLooked(text)).toBe(false);
  });
});

test('a text made to be slow is read in no time', () => {
  const start = performance.now();
  for (const one of [
    'to be ',
    'not yet ',
    'by me because ',
    'left right ',
    'will has need ',
    'unchecked, ',
  ]) {
    admitsNotLooked(`${one.repeat(2000)}x!`);
    saysNotLooked(`${one.repeat(20)}x!`);
  }
  expect(performance.now() - start).toBeLessThan(1000);
});
