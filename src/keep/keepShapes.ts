/** Keeps the shape of the plan at hand for the next visit to the page. */
import type { StoreApi } from 'zustand/vanilla';
import type { Plan } from '../plan/schema.ts';
import { sameShape } from './sameShape.ts';
import type { ShapeStore } from './shapeStore.ts';
import type { Studio } from './studio.ts';
import { isRested } from './studio.ts';

/** A shape is kept when it has been at rest for so long, ms. */
const rest = 700;

/** Begins keeping the shapes of `studio`; that of `kept` is kept already. What is returned ends it. */
export function keepShapes(
  studio: StoreApi<Studio>,
  shapes: ShapeStore,
  kept: Plan | null,
): () => void {
  let last = kept;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = () => {
    const now = studio.getState();
    const { basket, mesh, plan, settling } = now;
    if (!basket || !mesh || !settling || !isRested(now)) return;
    last = plan;
    const { plan: _, ...shape } = basket;
    void shapes.keep(plan, { basket: shape, mesh, milliseconds: settling.milliseconds });
  };
  const stop = studio.subscribe((now, before) => {
    if (now.settling === before.settling) return;
    clearTimeout(timer);
    const isNews = !last || !sameShape(last, now.plan);
    if (isNews && isRested(now)) timer = setTimeout(keep, rest);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}
