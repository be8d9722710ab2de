/** Opening a plan from a file of this computer as one of the two that are compared. */
import { presentSide, putInPlace } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { longestText } from '../../plan/read.ts';

/** Opens the file's plan in the place of `side`; a file that is none leaves that plan as it is. */
export async function openBeside(file: File, side: Side): Promise<void> {
  const { openText, showProblem } = presentSide(side);
  if (file.size > 4 * longestText) {
    showProblem(`${file.name}: found ${file.size} bytes, allowed are at most ${4 * longestText}`);
    return;
  }
  try {
    openText(await file.text(), file.name, (plan) => putInPlace(side, plan));
  } catch {
    showProblem(`${file.name}: the browser could not read this file`);
  }
}
