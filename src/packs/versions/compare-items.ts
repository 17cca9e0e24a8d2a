import type { PackChange } from './pack-change.ts';
import type { Pack } from '../pack.ts';

/** What differs in the tables of a pack beside its rules, limits and statements. */
export function compareItems(before: Pack, after: Pack): readonly PackChange[] {
  return [
    // More heat is allowed for, a longer reach or a smaller tolerance: more is asked.
    ...numbers(
      before.allowances.map(({ means, kelvin }) => [`allowance for ${means}`, kelvin, ' K']),
      after.allowances.map(({ means, kelvin }) => [`allowance for ${means}`, kelvin, ' K']),
      'more',
    ),
    ...numbers(
      before.reaches.map(({ from, mm }) => [`reach of ${from}`, mm, ' mm']),
      after.reaches.map(({ from, mm }) => [`reach of ${from}`, mm, ' mm']),
      'more',
    ),
    ...numbers(
      (before.tolerances ?? []).map(({ of, atMostMm }) => [`tolerance of a ${of}`, atMostMm, ' mm']),
      (after.tolerances ?? []).map(({ of, atMostMm }) => [`tolerance of a ${of}`, atMostMm, ' mm']),
      'less',
    ),
    ...texts(before.windows, after.windows, windowName),
    ...texts(before.parts ?? [], after.parts ?? [], ({ part, grade, class: word }) =>
      [`part ${part}`, grade ?? word].filter((one) => one !== undefined).join(', '),
    ),
    ...texts(
      before.documents ?? [],
      after.documents ?? [],
      ({ document, revision = '', by }) =>
        `${document} ${revision} superseded by ${by.document} ${by.revision ?? ''}`,
    ),
    ...texts(before.raises ?? [], after.raises ?? [], ({ rule, to }) => `${rule} raised to a ${to}`),
  ];
}

/** `weld setting for bare sheet, 0.8 to 1 mm`. */
function windowName({ coat, overMm, upToMm }: Pack['windows'][number]): string {
  const sheet = coat === 'zinc' ? 'zinc-coated' : coat;
  return `weld setting for ${sheet} sheet over ${String(overMm)} to ${String(upToMm)} mm`;
}

type Row = readonly [name: string, value: number, unit: string];

function numbers(
  before: readonly Row[],
  after: readonly Row[],
  tighter: 'more' | 'less',
): readonly PackChange[] {
  const [old, now] = [before, after].map((rows) => new Map(rows.map(([name, value]) => [name, value])));
  const changed = after.flatMap(([name, value, unit]): readonly PackChange[] => {
    const was = old?.get(name);
    if (was === value) return [];
    const detail = `${String(value)}${unit}`;
    if (was === undefined) return [{ kind: 'added', what: 'table', name, detail }];
    const isTighter = tighter === 'more' ? value > was : value < was;
    const kind = isTighter ? 'tightened' : 'loosened';
    return [{ kind, what: 'table', name, detail: `${detail}; was ${String(was)}${unit}` }];
  });
  const gone = before.flatMap(([name]): readonly PackChange[] =>
    now?.has(name) === true ? [] : [{ kind: 'withdrawn', what: 'table', name }],
  );
  return [...changed, ...gone];
}

function texts<Item extends object>(
  before: readonly Item[],
  after: readonly Item[],
  name: (item: Item) => string,
): readonly PackChange[] {
  const apart = new Set(['since', 'until']);
  const form = (item: Item): string =>
    JSON.stringify(Object.entries(item).filter(([key]) => !apart.has(key)));
  const [old, now] = [new Set(before.map(form)), new Set(after.map(form))];
  const changes = (items: readonly Item[], others: ReadonlySet<string>, kind: 'added' | 'withdrawn') =>
    items
      .filter((item) => !others.has(form(item)))
      .map((item): PackChange => ({ kind, what: 'table', name: name(item).trim() }));
  return [...changes(after, old, 'added'), ...changes(before, now, 'withdrawn')];
}
