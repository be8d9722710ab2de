/** A plan that came in an address: looked over like a file, and never put over the present one unasked. */
import { readFragment } from '../../export/planLink.ts';
import { compareWith } from '../../keep/compareHere.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { rowCount } from '../../plan/counts.ts';
import { problemText } from '../../plan/problems.ts';
import { ask } from '../ask/asking.ts';
import { refusalText } from './orTell.ts';
import { takeInOne } from './takeIn.ts';

const onShelf = 'Your own plan stays as it is, on your shelf.';
const onNone =
  'There is no shelf here to keep your own plan on: if you open this one, undo brings yours back while the page is open; save yours as a file first to be sure.';

/** Asks what is to be done with the plan of `fragment`, or says what is wrong with it. */
export async function takeLink(fragment: string): Promise<void> {
  const reading = readFragment(fragment);
  if (!reading.ok) {
    const first = 'This link was not opened; your plan is as it was.';
    presentStudio().showProblem([first, ...reading.problems.map(problemText)].join('\n'));
    return;
  }
  const { plan } = reading;
  const { value } = await ask({
    title: `This link brings a plan: “${plan.name}”`,
    text: `It has ${rowCount(plan)} rows. ${keepState.getState().db ? onShelf : onNone}`,
    choices: [
      { value: 'open', label: 'Open it' },
      { value: 'beside', label: 'Look at it beside mine' },
      { value: 'leave', label: 'Leave it' },
    ],
  });
  if (value === 'open') {
    await takeInOne(plan).catch((error: unknown) => {
      presentStudio().showProblem(['This plan was not opened.', refusalText(error)].join('\n'));
    });
  }
  if (value === 'beside') compareWith(plan);
}
