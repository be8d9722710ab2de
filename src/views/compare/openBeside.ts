/** Opening a plan from a file of this computer as one of the two that are compared. */
import { compareWords } from '#words/compare.ts';
import { fileSizeWords } from '#words/fileSizes.ts';
import { presentSide, putInPlace } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { problemText } from '../../plan/problems.ts';
import { longestText } from '../../plan/read.ts';

/** Opens the file's plan in the place of `side`; a file that is none leaves that plan as it is. */
export async function openBeside(file: File, side: Side): Promise<void> {
  const { openText, showProblem } = presentSide(side);
  if (file.size > 4 * longestText) {
    const found = fileSizeWords.bytes(file.size);
    const allowed = fileSizeWords.atMostBytes(4 * longestText);
    showProblem(problemText({ file: file.name, path: '', found, allowed }));
    return;
  }
  try {
    openText(await file.text(), file.name, (plan) => putInPlace(side, plan));
  } catch {
    showProblem(compareWords.files.unreadable(file.name));
  }
}
