import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { builtInPacksWithCases } from '../../src/generated/built-in-packs.ts';
import { checkCases } from '../../src/judge/check-cases.ts';
import { factsOf, readTemplate } from '../../src/packs/message-template.ts';
import type { Pack } from '../../src/packs/pack.ts';

const general = builtInPacksWithCases().find(({ name }) => name === 'general');
if (general === undefined) throw new Error('the general pack is not built in');
const pack: Pack = general;

test('every case of every rule comes out as its rule claims', () => {
  expect(checkCases(pack)).toEqual([]);
});

test('there are at least sixty rules, each with a find and a near miss', () => {
  expect(pack.rules.length).toBeGreaterThanOrEqual(60);
  for (const { id, cases } of pack.rules) {
    expect([id, cases !== undefined && cases.finds.length > 0 && cases.passes.length > 0]).toEqual([id, true]);
  }
});

test('every rule of the folder is in the pack that is built in', () => {
  const ids = readdirSync('rules/general')
    .filter((name) => name !== 'pack.yaml')
    .flatMap((name): readonly string[] => {
      const file: { readonly rules?: readonly { readonly id: string }[] } = parse(readFileSync(`rules/general/${name}`, 'utf8'));
      return (file.rules ?? []).map(({ id }) => id);
    });
  expect(pack.rules.map(({ id }) => id).sort()).toEqual(ids.sort());
  expect(new Set(ids).size).toBe(ids.length);
});

test('messages speak the trade’s language', () => {
  for (const { id, message, instead, why } of pack.rules) {
    expect([id, /\b(?:invalid|please|illegal)\b/iu.test(`${message} ${instead} ${why}`)]).toEqual([id, false]);
    if (!message.startsWith('{entry.path}')) expect(message).toMatch(/[.}\]]$/u);
    expect(instead).toMatch(/[.}\]]$/u);
    expect(why).toMatch(/\.$/u);
  }
});

test('no sentence fills in a fact whose absence is what the rule finds', () => {
  for (const { id, when, message, instead } of pack.rules) {
    const absent = when.filter(({ test: asked }) => 'known' in asked && !asked.known).map(({ fact }) => fact);
    const named = [message, instead].flatMap((text) => {
      const template = readTemplate(text);
      return template.ok ? factsOf(template.segments) : [];
    });
    expect([id, named.filter((fact) => absent.includes(fact))]).toEqual([id, []]);
  }
});
