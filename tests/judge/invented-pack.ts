import type { Fact } from '../../src/facts/fact.ts';
import type { FactSheet } from '../../src/facts/sheet.ts';
import { compileRules } from '../../src/judge/compile-rules.ts';
import type { CompiledRules } from '../../src/judge/compile-rules.ts';
import type { FactDictionary } from '../../src/packs/fact-dictionary.ts';
import type { Rule } from '../../src/packs/pack.ts';

/** A tiny world to judge in: boxes that hold things. */
export const dictionary: FactDictionary = {
  version: 1,
  facts: {
    'box.colour': { kind: 'part', type: 'word', words: ['red', 'green'], description: 'Colour.' },
    'box.weight': { kind: 'part', type: 'number', unit: 'mm', dimension: 'length', description: 'Size.' },
    'part.name': { kind: 'part', type: 'text', description: 'Name.' },
    'thing.sharp': { kind: 'operation', type: 'yes-no', description: 'Whether it is sharp.' },
    'provision.permits': { kind: 'operation', type: 'yes-no', description: 'Whether it is permitted.' },
    'provision.by': { kind: 'operation', type: 'text', description: 'By what.' },
  },
  kinds: { part: { standsOn: [] }, operation: { standsOn: ['part'] } },
};

export function rule(given: Partial<Rule> & Pick<Rule, 'id' | 'judges' | 'when'>): Rule {
  return {
    topic: 'heat',
    since: '1.0.0',
    severity: 'stop',
    from: 'draft',
    unless: [],
    message: 'found',
    instead: 'do otherwise',
    why: 'because',
    source: { practice: 'common' },
    cases: { finds: [], passes: [], asks: [] },
    ...given,
  };
}

export function compiled(rules: readonly Rule[]): CompiledRules {
  return compileRules(
    {
      layers: [{ name: 'invented', version: '1.0.0', digest: 'sha256:0', released: false, rules }],
      limits: new Map(),
      practice: { allowanceKelvin: new Map(), reachMm: new Map() },
      makers: [],
      setAside: [],
    },
    dictionary,
  );
}

export function known(value: string | number | boolean): Fact {
  return { known: true, value, from: 'stated' };
}

export function unknown(reason: string, at?: string): Fact {
  return at === undefined ? { known: false, reason } : { known: false, reason, at };
}

export function box(id: string, index: number, facts: Readonly<Record<string, Fact>>): FactSheet {
  return {
    kind: 'part',
    at: `/parts/${String(index)}`,
    part: id,
    facts: { 'part.name': known(`Box ${id}`), ...facts },
    standsOn: [],
  };
}

export function thing(on: FactSheet, index: number, facts: Readonly<Record<string, Fact>>): FactSheet {
  const at = `${on.at}/operations/${String(index)}`;
  return {
    kind: 'operation',
    at,
    facts,
    standsOn: [on],
    operation: at,
    ...(on.part === undefined ? {} : { part: on.part }),
  };
}
