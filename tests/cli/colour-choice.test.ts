import { expect, test } from 'vitest';
import { wantsColour } from '../../src/cli/reporting/colour-choice.ts';

// no-color.org: a NO_COLOR that is set and not empty means no colour. force-color.org: the same for FORCE_COLOR and colour.
test.each<readonly [Record<string, string>, boolean, boolean]>([
  [{}, false, false],
  [{}, true, true],
  [{ TERM: 'xterm-256color' }, true, true],
  [{ TERM: 'dumb' }, true, false],
  [{ NO_COLOR: '1' }, true, false],
  [{ NO_COLOR: '0' }, true, false],
  [{ NO_COLOR: '' }, true, true],
  [{ NO_COLOR: '' }, false, false],
  [{ FORCE_COLOR: '1' }, false, true],
  [{ FORCE_COLOR: '3' }, false, true],
  [{ FORCE_COLOR: 'true' }, false, true],
  [{ FORCE_COLOR: '1', TERM: 'dumb' }, false, true],
  [{ FORCE_COLOR: '0' }, true, false],
  [{ FORCE_COLOR: 'false' }, true, false],
  [{ FORCE_COLOR: '' }, false, false],
  [{ FORCE_COLOR: '' }, true, true],
  [{ NO_COLOR: '1', FORCE_COLOR: '1' }, true, false],
  [{ NO_COLOR: '', FORCE_COLOR: '1' }, false, true],
])('%j, terminal: %s → colour: %s', (environment, isTerminal, wanted) => {
  expect(wantsColour(environment, isTerminal)).toBe(wanted);
});
