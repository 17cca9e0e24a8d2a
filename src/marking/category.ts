/** What marks are given for, in the order in which they are told. */
export const categories = ['decision', 'citation', 'heat', 'joints', 'completeness', 'safety'] as const;

export type Category = (typeof categories)[number];
