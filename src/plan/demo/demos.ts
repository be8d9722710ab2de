/** Baskets to start from, all from the evening class at the Tidemill orchard, which is invented. */
import type { Plan, PlanDocument } from '../schema.ts';
import { planSchema } from '../schema.ts';
import { dryingTray } from './dryingTray.ts';
import { labelPot } from './labelPot.ts';
import { orchardTrug } from './orchardTrug.ts';
import { russetJar } from './russetJar.ts';

export interface Demo {
  readonly id: string;
  readonly title: string;
  readonly plan: Plan;
}

/** The first one is what the app opens with. */
export const demos: readonly [Demo, ...Demo[]] = [
  demo('orchard-trug', orchardTrug),
  demo('label-pot', labelPot),
  demo('drying-tray', dryingTray),
  demo('russet-jar', russetJar),
];

function demo(id: string, document: PlanDocument): Demo {
  return { id, title: document.name, plan: planSchema.parse(document) };
}
