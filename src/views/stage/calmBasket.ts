import { isRested } from '../../keep/studio.ts';
import { here } from '../../keep/useStudio.ts';
import type { Basket } from '../../model/basket.ts';
import { live, useLive } from '../../scene/live.ts';

/** While shapes follow one another a newer one is read off no more often than this, ms. */
const pause = 150;

const calm = live<Basket | null>(here.getState().basket);
let timer: ReturnType<typeof setTimeout> | undefined;

here.subscribe((now, before) => {
  if (now.basket === before.basket && now.settling === before.settling) return;
  if (timer !== undefined && !isRested(now)) return;
  clearTimeout(timer);
  timer = undefined;
  if (isRested(now)) show();
  else timer = setTimeout(show, pause);
});

function show(): void {
  timer = undefined;
  const { basket } = here.getState();
  if (basket !== calm.get()) calm.set(basket);
}

/**
 * The basket for what is read off it rather than watched: the present one once it is at rest; under a hand
 * one that is a moment old. What uses it is not drawn anew for every shape of a drag.
 */
export function useCalmBasket(): Basket | null {
  return useLive(calm);
}
