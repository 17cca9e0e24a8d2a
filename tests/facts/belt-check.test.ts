import { expect, test } from 'vitest';
import { beltFault } from '../../src/facts/step/belt-check.ts';

// How a workshop writes down belts that are not in order, and belts that are: common practice, said by a person of the trade.

test.each([
  ...[
    'left front belt jams',
    'Rear right belt does not lock',
    'not in order',
    'webbing frayed at the tongue',
  ],
  ...[
    'all looked at, buckle left won’t latch',
    'left belt replaced; right belt torn',
    'Driver belt no longer retracts',
  ],
])('"%s" names a fault', (text) => {
  expect(beltFault(text)).toBeDefined();
});

test.each([
  ...[
    undefined,
    'in order',
    'All five looked at and pulled through by the maker’s list, in order',
    'no tears, nothing jams',
  ],
  ...[
    'Left front belt torn: replaced',
    'Left front belt and buckle replaced, seats in order',
    'none damaged',
    'not damaged',
  ],
  ...[
    'Left belt cut, replaced by the list, the others in order',
    'no belt sticks',
    'lock and return tested, no fault',
  ],
])('"%s" names none', (text) => {
  expect(beltFault(text)).toBeUndefined();
});
