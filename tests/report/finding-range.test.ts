import { describe, expect, test } from 'vitest';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { placeOf } from '../../src/plan/source-text.ts';
import { findingRange } from '../../src/report/finding-range.ts';
import { finding } from '../judge/invented-finding.ts';

const plan = `# A comment.
format: 1
vehicle:
  maker: Corvane
  vin: 0CVBAB2BZM0002207   # read twice
parts:
  - id: ring-l
    thickness: "1,4 mm"
    strenght: 1500 MPa
    operations:
      - do: section
        cite: { reference: ring, at: p. 12 }
        near: [{ part: sill, distance: 10 mm }]
        joints:
          - sheets:
              - ring-l
      - {}
  - operations: [{ do: heat }]
`;

interface Stretch {
  readonly from: string;
  readonly to: string;
  readonly text: string;
}

/** Where the finding points, as line:column of its start and end, and what stands there. */
function pointed(pointer: string, text = plan, fault?: string): Stretch {
  const yaml = readYaml(text);
  if (!yaml.ok) throw new Error(yaml.faults[0]?.sentence);
  const facts = fault === undefined ? [] : [{ name: 'entry.fault', value: fault, from: 'computed' as const }];
  const range = findingRange(yaml.root, finding({ rule: 'x', severity: 'hold', pointer, facts }));
  const { line, column, endLine, endColumn } = placeOf({ path: 'plan.yaml', text }, range);
  return {
    from: `${String(line)}:${String(column)}`,
    to: `${String(endLine)}:${String(endColumn)}`,
    text: text.slice(range.start, range.end),
  };
}

test('a block that is left out: what asks for it', () => {
  expect(pointed('/make_safe/restraints').from).toBe('6:1');
  expect(pointed('/record').from).toBe('2:1');
  expect(pointed('/record', `format: 1\nstage: release\n`).from).toBe('2:1');
});

describe('what a finding points at', () => {
  test.each<readonly [string, string, Stretch]>([
    ['a value', '/vehicle/maker', { from: '4:10', to: '4:17', text: 'Corvane' }],
    ['a value before a comment', '/vehicle/vin', { from: '5:8', to: '5:25', text: '0CVBAB2BZM0002207' }],
    [
      'a value in quotes, quotes included',
      '/parts/0/thickness',
      { from: '8:16', to: '8:24', text: '"1,4 mm"' },
    ],
    ['a block: its key', '/vehicle', { from: '3:1', to: '3:8', text: 'vehicle' }],
    ['a list: its key', '/parts/0/operations', { from: '10:5', to: '10:15', text: 'operations' }],
    [
      'an entry of a list: its first line',
      '/parts/0/operations/0',
      { from: '11:9', to: '11:20', text: 'do: section' },
    ],
    [
      'an entry of a list that begins with a list: the key',
      '/parts/0/operations/0/joints/0',
      { from: '15:13', to: '15:19', text: 'sheets' },
    ],
    [
      'a value of a list',
      '/parts/0/operations/0/joints/0/sheets/0',
      { from: '16:17', to: '16:23', text: 'ring-l' },
    ],
    ['an empty block', '/parts/0/operations/1', { from: '17:9', to: '17:11', text: '{}' }],
    [
      'an entry in braces: its first key with its value',
      '/parts/0/operations/0/near/0',
      { from: '13:18', to: '13:28', text: 'part: sill' },
    ],
    [
      'a value in braces',
      '/parts/0/operations/0/near/0/distance',
      { from: '13:40', to: '13:45', text: '10 mm' },
    ],
    ['the whole plan: its first line', '', { from: '2:1', to: '2:10', text: 'format: 1' }],
    [
      'something missing in a block: the block’s key',
      '/vehicle/model_year',
      { from: '3:1', to: '3:8', text: 'vehicle' },
    ],
    [
      'something missing in an entry of a list: its first line',
      '/parts/0/operations/0/hold',
      { from: '11:9', to: '11:20', text: 'do: section' },
    ],
    [
      'something missing far below',
      '/parts/1/operations/0/near/3/distance',
      { from: '18:20', to: '18:28', text: 'do: heat' },
    ],
    [
      'something missing at the top: the first line',
      '/sign_off/date',
      { from: '2:1', to: '2:10', text: 'format: 1' },
    ],
    ['no pointer at all', 'nonsense', { from: '2:1', to: '2:10', text: 'format: 1' }],
  ])('%s', (_name, pointer, stretch) => {
    expect(pointed(pointer)).toEqual(stretch);
  });

  test('a key that nobody knows: the key, not its value', () => {
    expect(pointed('/parts/0/strenght', plan, 'unknown key')).toEqual({
      from: '9:5',
      to: '9:13',
      text: 'strenght',
    });
    expect(pointed('/parts/0/thickness', plan, 'unreadable quantity').text).toBe('"1,4 mm"');
  });

  test('a key with nothing behind it: the key', () => {
    const text = 'format: 1\nvehicle:\n  maker:\n  model: Tarn\nparts: []\n';
    expect(pointed('/vehicle/maker', text)).toEqual({ from: '3:3', to: '3:8', text: 'maker' });
  });

  test('lines and columns with CRLF, and columns in UTF-16 code units', () => {
    const text = 'format: 1\r\nvehicle: {trim: "🚗🚗", maker: Corvane}\r\nparts: []\r\n';
    // Each of the two cars takes two code units: `vehicle: {trim: "` is 17 long, then 4, then `", maker: ` 10.
    expect(pointed('/vehicle/maker', text)).toEqual({ from: '2:32', to: '2:39', text: 'Corvane' });
  });

  test('a text over several lines ends on its last', () => {
    const text = 'format: 1\nvehicle: {}\nparts:\n  - note: "one\n      two"\n';
    expect(pointed('/parts/0/note', text)).toEqual({ from: '4:11', to: '5:11', text: '"one\n      two"' });
  });
});
