import { describe, expect, test } from 'vitest';
import { schemaPartAt } from '../../src/plan/schema-part.ts';

const plan = {
  vehicle: { drive: ['hybrid'] },
  parts: [
    {
      under: 'skin',
      operations: [
        { cite: { reference: 'a' }, near: [{ distance: '10 mm' }] },
        { cite: [{ reference: 'b' }] },
      ],
    },
    { under: ['skin'], operations: 'none' },
  ],
};
const at = (...steps: readonly string[]): ReturnType<typeof schemaPartAt> => schemaPartAt(plan, steps);

describe('what the schema says of a place', () => {
  test('the whole plan', () => {
    expect(Object.keys(at()?.properties ?? {})).toEqual(
      expect.arrayContaining(['format', 'vehicle', 'parts']),
    );
  });

  test('through lists and references', () => {
    expect(at('parts')?.type).toBe('array');
    expect(at('parts', '0')?.properties).toHaveProperty('thickness');
    expect(at('parts', '0', 'operations', '0', 'do')?.enum).toContain('butt weld');
    expect(at('parts', '0', 'operations', '0', 'near', '0', 'distance')?.format).toBe('length');
  });

  test('what one or several may stand for follows what stands there', () => {
    expect(at('parts', '0', 'operations', '0', 'cite')?.type).toBe('object');
    expect(at('parts', '0', 'operations', '0', 'cite', 'reference')?.type).toBe('string');
    expect(at('parts', '0', 'operations', '1', 'cite')?.type).toBe('array');
    expect(at('parts', '0', 'operations', '1', 'cite', '0', 'reference')?.type).toBe('string');
    expect(at('parts', '0', 'under')?.type).toBe('string');
    expect(at('parts', '1', 'under', '0')?.type).toBe('string');
    expect(at('vehicle', 'drive', '0')?.enum).toContain('battery-electric');
  });

  test('a value that is not there yet has its part all the same', () => {
    expect(at('sign_off', 'by', 'name')?.type).toBe('string');
    expect(at('parts', '0', 'grade_from', 'by')?.enum).toContain('magnet');
  });

  test('off the schema there is none', () => {
    expect(at('parts', '0', 'strenght')).toBeUndefined();
    expect(at('colour', 'deep', 'below')).toBeUndefined();
    expect(at('vehicle', '__proto__')).toBeUndefined();
    expect(at('vehicle', 'constructor', 'name')).toBeUndefined();
    expect(at('parts', '1', 'operations', '0')).toBeUndefined();
  });
});
