/** A plan that came in an address: looked over like a file, and never put over the present one unasked. */
import { takeWords } from '#words/take.ts';
import { readFragment } from '../../export/planLink.ts';
import { compareWith } from '../../keep/compareHere.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { rowCount } from '../../plan/counts.ts';
import { problemText } from '../../plan/problems.ts';
import { ask } from '../ask/asking.ts';
import { refusalText } from './orTell.ts';
import { takeInOne } from './takeIn.ts';

const words = takeWords.link;

/** Asks what is to be done with the plan of `fragment`, or says what is wrong with it. */
export async function takeLink(fragment: string): Promise<void> {
  const reading = readFragment(fragment);
  if (!reading.ok) {
    const told = [words.notOpened, ...reading.problems.map(problemText)];
    presentStudio().showProblem(told.join('\n'));
    return;
  }
  const { plan } = reading;
  const { value } = await ask({
    title: words.title(plan.name),
    text: words.text(rowCount(plan), keepState.getState().db !== null),
    choices: [
      { value: 'open', label: words.open },
      { value: 'beside', label: words.beside },
      { value: 'leave', label: words.leave },
    ],
  });
  if (value === 'open') {
    await takeInOne(plan).catch((error: unknown) => {
      presentStudio().showProblem([words.planNotOpened, refusalText(error)].join('\n'));
    });
  }
  if (value === 'beside') compareWith(plan);
}
