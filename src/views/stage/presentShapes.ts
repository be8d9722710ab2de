import { useLayoutEffect, useState } from 'react';
import { isRested } from '../../keep/studio.ts';
import { here } from '../../keep/useStudio.ts';
import type { Live } from '../../scene/live.ts';
import { live } from '../../scene/live.ts';
import type { StageShape } from '../../scene/stageShape.ts';
import type { ShownBasket } from './stageShow.ts';

/** The shapes for the stage: those of the plan at hand or, while there is one, `built` in their place. */
export function usePresentShapes(built: ShownBasket | null): Live<StageShape | null> {
  const [shapes] = useState(() => live<StageShape | null>(shapeOf(built)));
  useLayoutEffect(() => {
    const follow = () => {
      const shape = shapeOf(built);
      if (!isSame(shape, shapes.get())) shapes.set(shape);
    };
    follow();
    return built ? undefined : here.subscribe(follow);
  }, [built, shapes]);
  return shapes;
}

function shapeOf(built: ShownBasket | null): StageShape | null {
  if (built) return { ...built, isAtRest: true, isPart: true };
  const now = here.getState();
  const { basket, mesh } = now;
  return basket && mesh && { basket, mesh, isAtRest: isRested(now) };
}

function isSame(one: StageShape | null, other: StageShape | null): boolean {
  return (
    one?.basket === other?.basket && one?.mesh === other?.mesh && one?.isAtRest === other?.isAtRest
  );
}
