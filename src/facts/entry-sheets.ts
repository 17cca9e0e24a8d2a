import type { EntryFault } from '../plan/entry-fault.ts';
import { namedAgain } from './named-again.ts';
import { nearestWords } from '../plan/nearest-word.ts';
import { pointerSteps, pointerTo } from '../plan/pointer.ts';
import type { Plan } from '../generated/plan-types.ts';
import { computed } from './make-fact.ts';
import { listOf } from './quantity-of.ts';
import type { FactSheet } from './sheet.ts';
import type { Survey } from './survey.ts';

/** One sheet for each entry that cannot be read as it stands, and for each id that is borne twice or points nowhere. */
export function entrySheets(
  survey: Survey,
  faults: readonly EntryFault[],
  planSheet: FactSheet,
): readonly FactSheet[] {
  return [...faults, ...repeatedIds(survey), ...danglingIds(survey), ...namedAgain(survey)].map((fault) => ({
    kind: 'entry',
    at: fault.pointer,
    facts: {
      'entry.fault': computed(fault.fault, fault.pointer),
      'entry.path': computed(pathText(survey.plan, fault.pointer), fault.pointer),
      'entry.sentence': computed(fault.sentence, fault.pointer),
    },
    standsOn: [planSheet],
  }));
}

/** Where the entry stands, in the words of the plan: parts › ring-l › operations › 1 › do. */
export function pathText(plan: Plan, pointer: string): string {
  let value: unknown = plan;
  return pointerSteps(pointer)
    .map((step) => {
      const list = Array.isArray(value);
      value = childOf(value, step);
      if (!list) return step;
      const id = childOf(value, 'id') ?? childOf(value, 'name');
      return typeof id === 'string' ? id : String(Number(step) + 1);
    })
    .join(' › ');
}

function childOf(value: unknown, step: string): unknown {
  if (Array.isArray(value)) return value[Number(step)];
  return isRecord(value) && Object.hasOwn(value, step) ? value[step] : undefined;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function repeatedIds(survey: Survey): readonly EntryFault[] {
  const lists = [
    ['/parts', 'id', survey.parts.map((one) => one.part.id)],
    ['/references', 'id', survey.references.map((one) => one.reference.id)],
    ['/measurements/points', 'name', (survey.plan.measurements?.points ?? []).map(({ name }) => name)],
  ] as const;
  const faults: EntryFault[] = [];
  for (const [list, key, ids] of lists) {
    const bearers = new Map<string, number[]>();
    ids.forEach((id, index) => {
      if (id === undefined) return;
      const found = bearers.get(id);
      if (found === undefined) bearers.set(id, [index]);
      else found.push(index);
    });
    for (const [id, [, second, ...others]] of bearers) {
      if (second === undefined) continue;
      const more = others.length === 0 ? '' : ` So it is by ${String(others.length)} more after this one.`;
      faults.push({
        fault: 'repeated id',
        pointer: `${list}/${String(second)}/${key}`,
        sentence: `The ${key} \`${id}\` is borne by an earlier entry too; what points at it means the earlier one.${more}`,
      });
    }
  }
  return faults;
}

function danglingIds(survey: Survey): readonly EntryFault[] {
  const faults: EntryFault[] = [];
  const partIds = new Set(survey.partById.keys());
  const referenceIds = new Set(survey.referenceById.keys());
  const point = (id: string | undefined, known: ReadonlySet<string>, what: string, pointer: string): void => {
    if (id === undefined || known.has(id)) return;
    const near = nearestWords(id, [...known]).map((one) => `\`${one}\``);
    const hint = near.length === 0 ? '' : ` Nearest known: ${near.join(', ')}.`;
    faults.push({
      fault: 'points nowhere',
      pointer,
      sentence: `No ${what} of this plan has the id \`${id}\`.${hint}`,
    });
  };
  const part = (id: string | undefined, pointer: string): void => {
    point(id, partIds, 'part', pointer);
  };
  const reference = (id: string | undefined, pointer: string): void => {
    point(id, referenceIds, 'reference', pointer);
  };

  for (const one of survey.parts) {
    const { under, over } = one.part;
    listOf(under).forEach((id, n) => {
      part(id, Array.isArray(under) ? `${one.at}/under/${String(n)}` : `${one.at}/under`);
    });
    listOf(over).forEach((id, n) => {
      part(id, Array.isArray(over) ? `${one.at}/over/${String(n)}` : `${one.at}/over`);
    });
    one.part.joined_to?.forEach((id, n) => {
      part(id, `${one.at}/joined_to/${String(n)}`);
    });
    for (const operation of one.operations) {
      operation.operation.near?.forEach((near, n) => {
        part(near.part, `${operation.at}/near/${String(n)}/part`);
      });
      for (const { joint, at } of operation.joints) {
        part(joint.to, `${at}/to`);
        joint.sheets?.forEach((id, n) => {
          part(id, `${at}/sheets/${String(n)}`);
        });
      }
    }
  }
  // An operation that rests on nothing else is judged for it.
  const judgedWithOperation = new Set(
    survey.operations.flatMap(({ restsOn }) => (restsOn === undefined ? [] : [`${restsOn.at}/reference`])),
  );
  for (const { id, pointer } of referencesIn(survey.plan, '')) {
    if (!judgedWithOperation.has(pointer)) reference(id, pointer);
  }
  const { make_safe: makeSafe, damage, measurements, hold_points: holdPoints, finish } = survey.plan;
  makeSafe?.restraints?.units?.forEach((unit, n) => {
    part(unit.at, `/make_safe/restraints/units/${String(n)}/at`);
  });
  makeSafe?.lifting?.points?.forEach((id, n) => {
    part(id, `/make_safe/lifting/points/${String(n)}`);
  });
  damage?.direct?.forEach((id, n) => {
    part(id, `/damage/direct/${String(n)}`);
  });
  holdPoints?.forEach((one, n) => {
    part(one.part, `/hold_points/${String(n)}/part`);
  });
  finish?.cavities?.forEach((cavity, n) => {
    part(cavity.part, `/finish/cavities/${String(n)}/part`);
  });
  const points = new Set(
    (measurements?.points ?? []).flatMap(({ name }) => (name === undefined ? [] : [name])),
  );
  measurements?.points?.forEach(({ on }, n) => {
    part(on, `/measurements/points/${String(n)}/on`);
  });
  if (points.size > 0) {
    measurements?.zero_points?.forEach((name, n) => {
      point(name, points, 'measured point', `/measurements/zero_points/${String(n)}`);
    });
    measurements?.points?.forEach(({ other_side: other }, n) => {
      point(other, points, 'measured point', `/measurements/points/${String(n)}/other_side`);
    });
  }
  const openings = new Set(
    (measurements?.openings ?? []).flatMap(({ name }) => (name === undefined ? [] : [name])),
  );
  measurements?.openings?.forEach(({ corners, other_side: other }, n) => {
    point(other, openings, 'opening', `/measurements/openings/${String(n)}/other_side`);
    corners?.forEach((name, corner) => {
      point(name, points, 'measured point', `/measurements/openings/${String(n)}/corners/${String(corner)}`);
    });
  });
  return faults;
}

interface PointsAtReference {
  readonly id: string;
  readonly pointer: string;
}

/** Every key `reference` of the plan, wherever a page is cited. */
function referencesIn(value: unknown, pointer: string): readonly PointsAtReference[] {
  const found: PointsAtReference[] = [];
  collectReferences(value, pointer, found);
  return found;
}

/** Every value of the plan is walked over; a pointer is made only on the way to what may hold a reference. */
function collectReferences(value: unknown, pointer: string, found: PointsAtReference[]): void {
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) {
      if (typeof item === 'object' && item !== null)
        collectReferences(item, pointerTo(pointer, index), found);
    }
  } else if (isRecord(value)) {
    for (const key of Object.keys(value)) {
      const item = value[key];
      if (typeof item === 'object' && item !== null) collectReferences(item, pointerTo(pointer, key), found);
      else if (key === 'reference' && typeof item === 'string')
        found.push({ id: item, pointer: pointerTo(pointer, key) });
    }
  }
}
