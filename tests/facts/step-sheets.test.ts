import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const places = {
  batteries: '/make_safe/low_voltage',
  restraints: '/make_safe/restraints',
  isolation: '/make_safe/high_voltage/isolation',
  proof: '/make_safe/high_voltage/proof_of_absence',
  recommissioning: '/verify/high_voltage',
} as const;

/** A fact of one step, `open` when it is not known. */
function step(where: keyof typeof places, name: string, text: string): unknown {
  const fact = factsOf(`${tarn}\n${text}`).fact(`step.${name}`, places[where]);
  return fact.known ? fact.value : 'open';
}
const safe = (entries: string): string => `make_safe: { ${entries} }`;

test('every step has its sheet, stated or not', () => {
  const whats = factsOf('')
    .all('step')
    .map((sheet) => {
      const fact = sheet.facts['step.what'];
      return fact?.known === true && fact.value;
    });
  expect([...whats].sort()).toEqual([
    'absence of voltage proved',
    'bake',
    'batteries disconnected',
    'battery damage dealt with',
    'high-voltage isolation',
    'high-voltage re-commissioning',
    'restraint completion',
    'restraints made safe',
    'road test',
    'scan after the repair',
    'scan before the repair',
    'sensor calibration',
    'wheel alignment',
  ]);
});

describe('stated, done, by whom', () => {
  test('a step that is refused is not stated', () => {
    expect(step('batteries', 'stated', '')).toBe(false);
    // Neither planned nor done.
    expect(step('batteries', 'stated', safe('low_voltage: { batteries: [12 V] }'))).toBe('open');
    expect(step('isolation', 'stated', safe('high_voltage: { isolation: { lock: K-7 } }'))).toBe('open');
    expect(step('batteries', 'stated', safe('low_voltage: { done: 2026-10-06 }'))).toBe(true);
    // Both.
    expect(step('batteries', 'stated', safe('low_voltage: { planned: false, done: 2026-10-06 }'))).toBe(
      'open',
    );
    expect(step('batteries', 'stated', safe('low_voltage: { planned: true }'))).toBe(true);
    expect(step('batteries', 'stated', safe('low_voltage: { planned: false }'))).toBe(false);
  });

  test('what is refused as a whole and planned in its parts cannot be told', () => {
    const whole = (planned: string): unknown =>
      step(
        'isolation',
        'stated',
        safe(`high_voltage: { planned: ${planned}, isolation: { planned: true } }`),
      );
    expect(whole('true')).toBe(true);
    expect(whole('false')).toBe('open');
    expect(
      step('isolation', 'stated', safe('high_voltage: { planned: false, isolation: { planned: false } }')),
    ).toBe(false);
  });

  test('`none` is no name, no certificate and no lock', () => {
    const isolation = (fact: string, entries: string): unknown =>
      step('isolation', fact, safe(`high_voltage: { isolation: { planned: true, ${entries} } }`));
    expect(isolation('person', 'by: { name: none }')).toBe(false);
    expect(isolation('person', 'by: { name: to be named }')).toBe(false);
    expect(isolation('qualified', 'by: { name: L, qualification: none yet }')).toBe(false);
    expect(isolation('qualified', 'by: { name: L, qualification: "high voltage, level 2" }')).toBe(true);
    expect(isolation('missing', 'lock: none')).toBe('lock and tag');
  });

  test('done when a day stands there', () => {
    expect(step('batteries', 'done', safe('low_voltage: { done: 2026-10-06 }'))).toBe(true);
    expect(step('batteries', 'done', safe('low_voltage: { planned: true }'))).toBe(false);
    expect(step('batteries', 'done', safe('low_voltage: { done: yesterday }'))).toBe(false);
  });

  test('a person with name, and with qualification', () => {
    const by = (person: string): readonly unknown[] => {
      const text = safe(`high_voltage: { isolation: { by: { ${person} } } }`);
      return [step('isolation', 'person', text), step('isolation', 'qualified', text)];
    };
    expect(by('name: L. Brandt, qualification: HV level 2')).toEqual([true, true]);
    expect(by('name: L. Brandt')).toEqual([true, false]);
    expect(by('qualification: HV level 2')).toEqual([false, true]);
    const forAll = safe('high_voltage: { person: { name: L. Brandt }, isolation: {}, proof_of_absence: {} }');
    expect([step('isolation', 'person', forAll), step('proof', 'person', forAll)]).toEqual([true, true]);
  });

  test('cited by the maker’s page for this car', () => {
    const cited = (id: string): unknown =>
      step(
        'isolation',
        'cited',
        safe(`high_voltage: { isolation: { cite: { reference: ${id}, at: p. 1 } } }`),
      );
    expect(['own', 'old', 'course', 'nobody'].map(cited)).toEqual([true, false, false, false]);
  });
});

describe('what belongs to the step', () => {
  const batteries = (entries: string, drive = ''): unknown => {
    const text = tarn.replace('body: wagon, model_year', `${drive}body: wagon, model_year`);
    const fact = factsOf(`${text}\n${safe(`low_voltage: { ${entries} }`)}`).fact(
      'step.missing',
      places.batteries,
    );
    return fact.known ? fact.value : 'nothing';
  };

  test('every battery that the car has by its drive or by the plan', () => {
    expect(batteries('planned: true')).toBe('the 12 V battery');
    expect(batteries('planned: true, batteries: [12 V]')).toBe('nothing');
    expect(batteries('planned: true, batteries: [12 V], fitted: [12 V, auxiliary]')).toBe(
      'the auxiliary battery',
    );
    expect(batteries('planned: true, batteries: [12 V]', 'drive: mild-hybrid, ')).toBe('the 48 V battery');
    expect(batteries('planned: true, batteries: [12 V, 48 V]', 'drive: [combustion, mild-hybrid], ')).toBe(
      'nothing',
    );
    expect(batteries('planned: false, batteries: [12 V]')).toBe('the 12 V battery');
    expect(batteries('planned: false, done: 2026-10-06, batteries: [12 V]')).toBe('nothing');
  });

  test('a step that is not there misses all of itself', () => {
    expect(step('batteries', 'missing', '')).toBe('every battery, for nothing is said of them');
    expect(step('batteries', 'complete', '')).toBe(false);
  });

  test('isolation needs lock and tag', () => {
    expect(
      step('isolation', 'complete', safe('high_voltage: { isolation: { planned: true, lock: K-7 } }')),
    ).toBe(true);
    expect(step('isolation', 'missing', safe('high_voltage: { isolation: {} }'))).toBe('lock and tag');
  });

  test('the proof needs the meter proved before and after, a reading that is dead, day and time', () => {
    const proof = (entries: string): unknown =>
      step('proof', 'missing', safe(`high_voltage: { proof_of_absence: { ${entries} } }`));
    const full =
      'meter_proved_before: true, reading: 0.3 V, meter_proved_after: true, done: 2026-10-06T09:10';
    expect(proof(full)).toBe('open');
    expect(proof('')).toBe('the meter proved before, the reading, the meter proved after, day and time');
    expect(proof(full.replace('T09:10', ''))).toBe('day and time');
    expect(proof(full.replace('after: true', 'after: false'))).toBe('the meter proved after');
    // 60 V of direct current: UN R100 (from memory).
    expect(proof(full.replace('0.3 V', '60 V'))).toBe('open');
    expect(proof(full.replace('0.3 V', '61 V'))).toBe('a reading below 60 V');
    expect(proof(full.replace('0.3 V', '0.4 kV'))).toBe('a reading below 60 V');
    expect(proof(full.replace('0.3 V', '0'))).toBe('the reading');
    // Leads the other way round read below zero and are as live.
    expect(proof(full.replace('0.3 V', '-380 V'))).toBe('a reading below 60 V');
    expect(proof(full.replace('0.3 V', '-0.3 V'))).toBe('open');
    expect(proof(full.replace('0.3 V', '390 mV'))).toBe('open');
  });

  test('re-commissioning needs the insulation value and the faults that are left', () => {
    const margin = (entries: string): unknown =>
      step('recommissioning', 'insulation_margin', `verify: { high_voltage: { ${entries} } }`);
    expect(step('recommissioning', 'missing', 'verify: { high_voltage: {} }')).toBe(
      'the insulation value, the faults that are left, the day',
    );
    // 500 Ω/V: UN R100 for circuits with alternating current (from memory).
    expect(margin('insulation: 499 Ω/V')).toBe(-1);
    expect(margin('insulation: 600 Ω/V')).toBe(100);
    expect(margin('insulation: 600 Ω/V, limit: 1000 Ω/V')).toBe(-400);
    expect(margin('faults: none')).toBe('open');
  });
});

describe('waiting for the restraints', () => {
  test('short when it is shorter than the page asks', () => {
    const short = (entries: string): unknown =>
      step('restraints', 'wait_short', safe(`restraints: { ${entries} }`));
    expect(short('wait: 2 min, wait_asked: 3 min')).toBe(true);
    expect(short('wait: 180 s, wait_asked: 3 min')).toBe(false);
    expect(short('wait: 10 min')).toBe('open');
    expect(short('wait_asked: 10 min')).toBe('open');
  });

  test('cited only when a wait stands there', () => {
    const cite = 'wait_cite: { reference: own, at: p. 1 }';
    expect(step('restraints', 'wait_cited', safe(`restraints: { wait: 3 min, ${cite} }`))).toBe(true);
    expect(step('restraints', 'wait_cited', safe(`restraints: { ${cite} }`))).toBe(false);
  });
});

describe('order', () => {
  const order = (done: string, work: string, where: keyof typeof places = 'batteries'): unknown =>
    step(
      where,
      'in_order',
      `${safe(`low_voltage: { done: ${done} }, high_voltage: { isolation: { done: ${done} } }`)}
verify: { high_voltage: { done: ${done} } }
parts: [{ kind: sill, operations: [${work}] }]`,
    );
  const weld = (done: string): string => `{ do: weld, done: ${done} }`;

  test('before the work', () => {
    expect(order('2026-10-06', weld('2026-10-07'))).toBe(true);
    expect(order('2026-10-08', weld('2026-10-07'))).toBe(false);
    expect(order('2026-10-07T08:00', weld('2026-10-07T09:00'))).toBe(true);
    expect(order('2026-10-07T10:00', weld('2026-10-07T09:00'))).toBe(false);
    expect(order('2026-10-07', weld('2026-10-07T09:00'))).toBe('open');
    expect(order('2026-10-07', `${weld('2026-10-08')}, ${weld('2026-10-06')}`)).toBe(false);
  });

  test('after the work', () => {
    expect(order('2026-10-08', weld('2026-10-07'), 'recommissioning')).toBe(true);
    expect(order('2026-10-06', weld('2026-10-07'), 'recommissioning')).toBe(false);
  });

  test('work that is neither hot nor on the body does not count for batteries; for isolation any work on the body does', () => {
    expect(order('2026-10-08', '{ do: refinish, done: 2026-10-07 }')).toBe('open');
    expect(order('2026-10-08', '{ do: straighten, method: cold, done: 2026-10-07 }')).toBe('open');
    expect(order('2026-10-08', '{ do: straighten, method: cold, done: 2026-10-07 }', 'isolation')).toBe(
      false,
    );
  });

  test('without days it is open', () => {
    expect(order('2026-10-06', '{ do: weld }')).toBe('open');
    expect(step('batteries', 'in_order', safe('low_voltage: {}'))).toBe('open');
  });
});

test('a damaged battery is watched at a place with a distance', () => {
  const missing = (entries: string): unknown => {
    const fact = factsOf(safe(`high_voltage: { ${entries} }`)).fact(
      'step.missing',
      '/make_safe/high_voltage',
    );
    return fact.known ? fact.value : 'nothing';
  };
  expect(missing('quarantine: { place: yard }')).toBe(
    'the distance of the quarantine, the watch of the quarantine',
  );
  expect(missing('quarantine: { place: yard, distance: 15 m, watch: 48 h }')).toBe('nothing');
  expect(missing('battery_condition: hit')).toBe(
    'the place of the quarantine, the distance of the quarantine, the watch of the quarantine',
  );
});

describe('what is read where voltage was to be absent', () => {
  test('the reading of that step, in volts', () => {
    const proof = (entries: string): unknown =>
      step('proof', 'reading', safe(`high_voltage: { proof_of_absence: { ${entries} } }`));
    expect(proof('reading: 0.4 kV')).toBe(400);
    expect(proof('planned: true')).toBe('open');
    expect(
      step(
        'isolation',
        'reading',
        safe('high_voltage: { isolation: {}, proof_of_absence: { reading: 400 V } }'),
      ),
    ).toBe('open');
  });
});

test('a memory supply keeps the circuits live: the batteries are not off', () => {
  const missing = (entries: string): unknown =>
    step('batteries', 'missing', safe(`low_voltage: { batteries: [12 V], ${entries} }`));
  expect(missing('memory_supply: true')).toBe('the memory supply');
  expect(missing('memory_supply: false')).toBe('open');
});

test('before release nothing is dated yet, so nothing is out of order', () => {
  const text = (stage: string): string =>
    `stage: ${stage}\n${safe('high_voltage: { isolation: { done: 2026-10-20 } }')}\nparts: [{ operations: [{ do: weld }] }]`;
  expect(step('isolation', 'in_order', text('start'))).toBe(true);
  expect(step('isolation', 'in_order', text('release'))).toBe('open');
});

describe('the proof comes after the isolation', () => {
  const after = (isolated: string, proved: string): unknown =>
    step(
      'proof',
      'after_isolation',
      safe(`high_voltage: { isolation: { done: ${isolated} }, proof_of_absence: { done: ${proved} } }`),
    );
  test.each([
    ['2026-10-20T09:00', '2026-10-20T08:30', false],
    ['2026-10-20T09:00', '2026-10-20T09:00', true],
    ['2026-10-20T09:00', '2026-10-19T16:00', false],
    ['2026-10-19T17:00', '2026-10-20T08:00', true],
    ['2026-10-20', '2026-10-20T08:00', 'open'],
  ])('isolated %s, proved %s: %s', (isolated, proved, expected) => {
    expect(after(isolated, proved)).toBe(expected);
  });
});
