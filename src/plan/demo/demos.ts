/** Baskets to start from, all from the evening class at the Tidemill orchard, which is invented. */
import type { Plan, PlanDocument } from '../schema.ts';
import { planSchema } from '../schema.ts';
import { dryingTray } from './dryingTray.ts';
import { labelPot } from './labelPot.ts';
import { loafBasket } from './loafBasket.ts';
import { orchardTrug } from './orchardTrug.ts';
import { plumBowl } from './plumBowl.ts';
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
  demo('plum-bowl', plumBowl),
  demo('loaf-basket', loafBasket),
];

function demo(id: string, document: PlanDocument): Demo {
  return { id, title: document.name, plan: planSchema.parse(document) };
}
