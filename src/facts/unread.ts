import type { Survey } from './survey.ts';

/**
 * The place of what the plan writes at `pointer` and nobody can reckon with: the entry itself, or an axis of a place. Undefined where
 * nothing is written, or what is written was read. Such an entry is told for itself; nothing says then that it is not stated.
 */
export function unreadAt({ unread }: Pick<Survey, 'unread'>, pointer: string): string | undefined {
  if (unread === undefined || unread.size === 0) return undefined;
  return [pointer, ...axes.map((axis) => `${pointer}/${axis}`)].find((one) => unread.has(one));
}

const axes = ['0', '1', '2'] as const;
