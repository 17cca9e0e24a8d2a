import { describe, expect, test } from 'vitest';
import { factsOf } from '../facts/facts-of.ts';
import { judgeText } from '../judge-text.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import type { ResolvedPacks } from '../../src/packs/layers/resolve-packs.ts';
import { skin } from '../one-change.ts';

function packs(pin: string): ResolvedPacks {
  const answer = resolvePacks(builtInPacks(), [pin]);
  if (!answer.ok) throw new Error(answer.sentence);
  return answer.packs;
}

describe('an id has an answer in every version', () => {
  test.each([
    ['general@2', 'section-ultra-high-strength', { kind: 'current' }],
    [
      'general@2',
      'section-ultra-high-strength-held',
      { kind: 'ended', with: 'general 2.0.0', replacedBy: 'section-ultra-high-strength' },
    ],
    ['general@1', 'section-ultra-high-strength-held', { kind: 'current' }],
    ['general@1', 'section-ultra-high-strength', { kind: 'later', with: 'general 2.0.0' }],
    ['general@1.0', 'look-up-aged', { kind: 'later', with: 'general 1.1.0' }],
    ['general@1', 'look-up-aged', { kind: 'current' }],
    ['general@2', 'look-up-agd', { kind: 'no such rule', nearest: ['look-up-aged'] }],
  ])('%s %s', (pin, id, expected) => {
    expect(packs(pin).standingOf(id)).toEqual(expected);
  });
});

describe('a deviation for an id that is not in force', () => {
  const permit = (rule: string): string =>
    `${skin}\ndeviations: [{ rule: ${rule}, by: { name: L. Brandt, role: master }, date: 2026-10-10, expires: 2026-10-30, reason: so agreed }]\n`;
  const told = (rule: string): string =>
    judgeText(permit(rule)).findings.find(({ finding }) => finding.rule === 'deviation-matches-nothing')
      ?.finding.message ?? '';

  test('names the successor', () => {
    expect(told('section-ultra-high-strength-held')).toBe(
      'The deviation permit for section-ultra-high-strength-held matches no finding of this plan: the rule ended with general 2.0.0; section-ultra-high-strength took its place.',
    );
  });

  test('names the nearest known', () => {
    expect(told('look-up-not-datd')).toContain(
      'no pack here has such a rule; the nearest known is look-up-not-dated.',
    );
  });

  test('says nothing more of a rule in force', () => {
    expect(told('look-up-not-dated')).toBe(
      'The deviation permit for look-up-not-dated matches no finding of this plan.',
    );
  });

  test('without packs, nothing is claimed', () => {
    const text = 'deviations: [{ rule: old }]\n';
    expect(factsOf(text).value('deviation.rule_note')).toMatch(/^\? /u);
    const later = factsOf(text, { ruleStanding: () => ({ kind: 'ended', with: 'x 2.0.0' }) });
    expect(later.value('deviation.rule_note')).toBe('the rule ended with x 2.0.0, and none took its place');
  });
});
