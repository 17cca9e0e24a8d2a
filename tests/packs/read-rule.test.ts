import { expect, test } from 'vitest';
import type { Rule as StatedRule } from '../../src/generated/pack-types.ts';
import { FaultList } from '../../src/packs/reading/fault-list.ts';
import { readRule } from '../../src/packs/reading/read-rule.ts';
import { dictionary } from '../judge/invented-pack.ts';

function faultsOf(id: string): readonly string[] {
  const stated: StatedRule = {
    id,
    topic: 'heat',
    since: '1.0.0',
    judges: 'part',
    severity: 'stop',
    from: 'draft',
    when: { 'box.colour': 'red' },
    message: 'found',
    instead: 'do otherwise',
    why: 'because',
    source: { practice: 'common' },
    cases: { finds: [{ 'box.colour': 'red' }], passes: [{ 'box.colour': 'green' }] },
  };
  const list = new FaultList({ path: 'x.yaml', text: '' }, undefined);
  readRule(stated, '/rules/0', dictionary, list);
  return list.faults.map(({ sentence }) => sentence);
}

// A deviation names the rule by its id, so the id must be one that a person can type the same way twice.
test.each(['red box', 'Red-box', 'red--box', '-red', 'red_box', 'rot-größe'])(
  '%s is no id of a rule',
  (id) => {
    expect(faultsOf(id)[0]).toContain('The id of a rule has lower-case letters');
  },
);

test.each(['red-box', 'red', 'box-2'])('%s is one', (id) => {
  expect(faultsOf(id)).toEqual([]);
});
