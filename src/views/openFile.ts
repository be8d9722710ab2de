/** Opening a plan from a file of this computer. */
import type { Studio } from '../keep/studio.ts';
import { presentStudio } from '../keep/useStudio.ts';
import { longestText } from '../plan/read.ts';

/**
 * Opens the file's plan in a studio, that of the page unless told; a file that is none leaves the
 * present plan as it is and says why.
 */
export async function openFile(
  file: File,
  { openText, showProblem }: Studio = presentStudio(),
): Promise<void> {
  if (file.size > 4 * longestText) {
    showProblem(`${file.name}: found ${file.size} bytes, allowed are at most ${4 * longestText}`);
    return;
  }
  try {
    openText(await file.text(), file.name);
  } catch {
    showProblem(`${file.name}: the browser could not read this file`);
  }
}
