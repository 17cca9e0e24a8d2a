import type { RulePage } from './rule-page.ts';

/** `{"rules": [...]}`: the pages with the keys of pack files; cases as the pack states them, numbers in the unit of their fact. */
export function rulesJson(pages: readonly RulePage[]): string {
  const rules = pages.map(({ raised, inForce, replacedBy, ...page }) => ({
    ...page,
    in_force: inForce,
    ...(replacedBy === undefined ? {} : { replaced_by: replacedBy }),
    ...(raised === undefined ? {} : { raised }),
  }));
  return `${JSON.stringify({ rules }, undefined, 2)}\n`;
}
