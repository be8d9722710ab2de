/** Where the eyes of two pictures stand, so that turning one turns the other. */
import { Vector3 } from 'three';

/** A place of the eye and what it looks at, and who follows it. */
export interface Gaze {
  readonly position: Vector3;
  readonly target: Vector3;
  readonly followers: Set<() => void>;
}

/** A gaze that nobody follows yet. */
export function newGaze(): Gaze {
  return { position: new Vector3(), target: new Vector3(), followers: new Set() };
}

/** Moves the gaze, and all that follow it but `mover`. */
export function moveGaze(gaze: Gaze, position: Vector3, target: Vector3, mover: () => void): void {
  gaze.position.copy(position);
  gaze.target.copy(target);
  for (const follow of gaze.followers) if (follow !== mover) follow();
}
