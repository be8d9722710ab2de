import type { Place } from './usePlaceOf.ts';

/** Between card, place and the window's edges, px. */
const room = 12;

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * Where the upper left corner of a card goes: beside `place` where there is room for it (low down beside a
 * tall one, clear of the basket), else over its lower edge, and always in the window. CSS px.
 */
export function besidePlace(
  { width, height }: Size,
  place: Place | null,
  window: Size,
): { readonly left: number; readonly top: number } {
  const right = window.width - width - room;
  const bottom = window.height - height - room;
  const within = (left: number, top: number) => ({
    left: Math.max(room, Math.min(left, right)),
    top: Math.max(room, Math.min(top, bottom)),
  });
  if (!place) return within(right / 2, bottom);
  const middle = place.left + (place.width - width) / 2;
  const under = place.top + place.height + room;
  const over = place.top - height - room;
  const left = place.left - width - room;
  const beside = place.left + place.width + room;
  const isTall = place.height > window.height / 2;
  if (isTall && left >= room) return within(left, bottom);
  if (under <= bottom) return within(middle, under);
  if (left >= room) return within(left, place.top + room);
  if (over >= room) return within(middle, over);
  if (beside <= right) return within(beside, place.top + room);
  return within(middle, under - height - 2 * room);
}
