import type { Fact } from '../../../src/facts/fact.ts';
import type { PlannedHeat } from '../../../src/facts/heat/plan-heat.ts';
import type { PartShown } from '../../../src/facts/part/part-shown.ts';
import type { SheetReport } from '../../../src/report/sheet/sheet-report.ts';
import { hostilePlan } from '../hostile-plan.ts';
import { head } from '../invented-report.ts';

/** A sheet with the text in every field that a plan, a path or a pack can fill. */
export function hostileSheet(text: string): SheetReport {
  const facts = new Proxy<Record<string, Fact>>({}, { get: (_all, name) => factOf(String(name), text) });
  const citations = [{ text, standing: 'covers' as const }];
  const joint = {
    to: text,
    adhesive: { product: text },
    fastener: { product: text },
    hole: text,
    done: text,
  };
  const part: PartShown = {
    ...{ at: '/parts/0', id: text, name: text, kind: text, side: text, grade: text, materialFrom: text },
    ...{ foundBy: text, damageExtent: text, condition: text, note: text, layer: 2 },
    under: [text],
    besideWork: [text],
    over: [text, text],
    facts,
    operations: [
      {
        ...{ at: '/parts/0/operations/0', what: text, planned: true, done: text, by: text, reason: text },
        stated: [[text, text]],
        citations,
        near: [text],
        facts: { ...facts, 'provision.says': { known: true, value: text, from: 'stated', at: '/parts/0' } },
        joints: [{ joint, facts }],
      },
    ],
  };
  const plan = hostilePlan(text);
  const point = {
    name: text,
    part: text,
    zero: false,
    toleranceMm: 3,
    before: undefined,
    decision: undefined,
  };
  return {
    head: { ...head, packs: [{ pack: text, version: text, digest: text, released: false, newer: text }] },
    report: {
      ...plan,
      digest: text,
      measuring: {
        fits: [
          {
            ...{ occasion: 'after', zeroPoints: [text], residualMm: 1, scatterMm: 1, degreesOfFreedom: 3 },
            turnedDegrees: 0,
          },
        ],
        points: [{ ...point, nominal: [0, 0, 0], after: [4, 1, 0] }],
      },
    },
    shown: {
      job: { number: text, opened: text, revision: text, writtenBy: text },
      vehicle: text,
      vehicleFacts: facts,
      batteryFacts: facts,
      impact: text,
      references: [
        { at: '/references/0', name: text, title: `${text}!`, published: text, lookedUpBy: text, facts },
      ],
      parts: [part],
      steps: [{ how: text, done: text, by: text, facts }],
      hazards: [{ what: text, where: text, state: text, treatment: text, step: 1 }],
      openings: [facts],
      deviations: [
        { rule: text, part: text, operation: text, by: text, reason: text, date: text, expires: text },
      ],
      signOff: [text],
      signature: { planDigest: text, planish: text, packs: [{ name: text, digest: text }], facts: {} },
    },
    heats: [heat(text)],
  };
}

function factOf(name: string, text: string): Fact {
  return name.endsWith('s')
    ? { known: false, reason: text }
    : { known: true, value: text, from: 'table', note: text };
}

function heat(text: string): PlannedHeat {
  const curve = { distancesMm: [0, 10], peakCelsius: [600, 300], endOfHoldCelsius: [] };
  return {
    ...{
      at: '/parts/0/operations/0',
      part: text,
      what: text,
      from: 'arc',
      source: text,
      open: [text],
      runs: [],
    },
    seam: { curve },
    neighbours: [
      {
        ...{
          at: '/parts/0/operations/0/near/0',
          name: text,
          victim: `${text}!`,
          distanceMm: 5,
          peakCelsius: 400,
        },
        limitCelsius: 200,
        verdict: 'over its limit',
        clear: { ok: false, reason: text },
        reasons: [text],
        assumptions: [text],
      },
    ],
  };
}
