import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const of = (entries: string, name: string): unknown =>
  factsOf(`parts: [{ id: rail, operations: [{ do: weld, ${entries} }] }]`).value(`operation.${name}`);

describe('where the welding current goes', () => {
  test.each([
    'On the left wheel hub, that is bare metal already',
    'Wheel hub',
    'To the front brake disc',
    'on the coil spring of the strut',
  ])('%s runs through a bearing', (words) => {
    expect(of(`earth_clamp: "${words}"`, 'earth_clamp_on')).toBe('wheel, hub or suspension');
  });

  test.each([
    'On the wheel arch, 200 mm from the seam',
    'On the rail, 150 mm from the seam, clear of the hub',
    'On the inner wheelhouse',
    'On the strut tower',
    'None needed, both tips of the gun close the circuit.',
  ])('%s says nothing of the sort', (words) => {
    expect(of(`earth_clamp: "${words}"`, 'earth_clamp_on')).toMatch(/^\?/u);
  });

  test('the fixed words count, whatever the sentence says', () => {
    expect(of('earth_clamp: On the hub carrier, earth_clamp_on: same part', 'earth_clamp_on')).toBe(
      'same part',
    );
    expect(of('control_units: Stay plugged in, control_units_state: none near', 'control_units_state')).toBe(
      'none near',
    );
  });

  test.each([
    'Stay plugged, the seam is short',
    'Left plugged in',
    'Not unplugged',
    'The control units stay in',
  ])('%s leaves them in the current', (words) => {
    expect(of(`control_units: "${words}"`, 'control_units_state')).toBe('left plugged in');
  });

  test.each([
    'None within 300 mm of the current path.',
    'Unplugged under both front seats.',
    'Stay in the car, plugs removed',
    'Rear control unit unplugged and taken out.',
  ])('%s does not', (words) => {
    expect(of(`control_units: "${words}"`, 'control_units_state')).toMatch(/^\?/u);
  });

  test('the distance of the clamp', () => {
    expect(of('earth_clamp_distance: 0.6 m', 'earth_clamp_distance')).toBe(600);
  });
});
