import type { Plan } from './schema.ts';

/** Cut lengths are rounded up to a quarter inch or to 5 mm where a plan says nothing, mm. */
const usual = { in: 6.35, cm: 5, mm: 5 } as const;

/** What the plan's cut lengths are rounded up to, mm. */
export function cutStep({ allowances, display }: Pick<Plan, 'allowances' | 'display'>): number {
  return allowances.roundTo ?? usual[display.unit];
}
