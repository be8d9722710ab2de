/** The tour shows the page of a plan: from elsewhere one is brought there, and it begins. */
import { presentComparison } from '../../keep/compareHere.ts';

let isWanted = false;

/** Whether the tour was asked for on another page, and has not begun. */
export function isTourWanted(): boolean {
  return isWanted;
}

/** The tour has begun. */
export function tourBegins(): void {
  isWanted = false;
}

/** Goes to the page of the plan, where the tour then begins. */
export function leaveForTour(): void {
  isWanted = true;
  const { isOpen, close } = presentComparison();
  if (isOpen) close();
  if (globalThis.location.hash !== '') globalThis.location.hash = '#plan';
}
