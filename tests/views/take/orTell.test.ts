import { expect, test } from 'vitest';
import { copyPlan } from '../../../src/keep/shelf/shelfPlans.ts';
import { orTell, refusalText } from '../../../src/views/take/orTell.ts';
import { emptyShelf } from '../../keep/shelf/shelfDesk.ts';

test('a full disk, a closed shelf and any other refusal are told apart', async () => {
  const db = await emptyShelf();
  db.close();
  const closed: unknown = await copyPlan(db, 'x').catch((error: unknown) => error);
  expect(refusalText(closed)).toMatch(/^The shelf is closed/);
  expect(refusalText(new DOMException('', 'QuotaExceededError'))).toMatch(/no room left/);
  expect(refusalText('anything')).toMatch(/^The browser refused/);
});

test('what the browser refuses to do is not an error of the page', async () => {
  const db = await emptyShelf();
  expect(await orTell('It was not copied.', () => copyPlan(db, 'none'))).toBe(true);
  db.close();
  expect(await orTell('It was not copied.', () => copyPlan(db, 'none'))).toBe(false);
});
