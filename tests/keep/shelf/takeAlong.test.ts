import { expect, test } from 'vitest';
import { pageOf } from '../../../src/keep/benchBook.ts';
import { addPlans } from '../../../src/keep/shelf/shelfPlans.ts';
import { takeAlong } from '../../../src/keep/shelf/takeAlong.ts';
import { versionsOf } from '../../../src/keep/shelf/versions.ts';
import { sketch } from '../../../src/mesh/sketch.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf } from './shelfDesk.ts';

const { plan } = demos[0];
const version = { name: 'as taught', made: 5, plan: { ...plan, notes: 'old' } };
const page = pageOf({}, '', { 4: 612 });

test('versions and bench that come with a plan are joined to it once', async () => {
  const db = await emptyShelf();
  const [id = ''] = await addPlans(db, [{ plan, versions: [], page: undefined }]);
  expect(await takeAlong(db, id, { versions: [version], page })).toBe(2);
  expect((await versionsOf(db, id)).map(({ name, made }) => ({ name, made }))).toEqual([
    { name: 'as taught', made: 5 },
  ]);
  expect((await db.get('bench', id))?.page).toEqual(page);
  expect(await takeAlong(db, id, { versions: [version], page })).toBe(0);
});

test('a page of the bench that is there is not written over', async () => {
  const db = await emptyShelf();
  const [id = ''] = await addPlans(db, [{ plan, versions: [], page }]);
  const other = pageOf({}, '', { 9: 1 });
  expect(await takeAlong(db, id, { versions: [], page: other })).toBe(0);
  expect((await db.get('bench', id))?.page).toEqual(page);
});

test('older versions of an archive push out none that the shelf has', async () => {
  const db = await emptyShelf();
  const own = Array.from({ length: 60 }, (_, at) => ({ name: null, made: 100 + at, plan }));
  const [id = ''] = await addPlans(db, [{ plan, versions: own, page: undefined }]);
  const older = [1, 2, 3].map((made) => ({ ...version, name: null, made }));
  const coming = { versions: [...older, version], page: undefined };
  expect(await takeAlong(db, id, coming)).toBe(1);
  const now = await versionsOf(db, id);
  expect(now.filter(({ name }) => name === null).map(({ made }) => made)).toEqual(
    own.map(({ made }) => made).reverse(),
  );
  expect(now.at(-1)).toMatchObject({ name: 'as taught', thumbnail: sketch(version.plan) });
});

test('nothing comes to a plan that is not there', async () => {
  const db = await emptyShelf();
  expect(await takeAlong(db, 'none', { versions: [version], page })).toBe(0);
  expect(await db.count('versions')).toBe(0);
});
