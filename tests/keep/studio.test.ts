import { expect, test } from 'vitest';
import { changed, newHistory, undone } from '../../src/keep/history.ts';
import { studio } from '../../src/keep/studio.ts';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { baseLift } from '../../src/plan/baseSize.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { writePlan } from '../../src/plan/read.ts';
import type { Plan } from '../../src/plan/schema.ts';
import type { SettleResult } from '../../src/work/caller.ts';
import { matOf } from '../plan/plans.ts';

const { plan } = demos[0];
const basket = settleBasket(plan);
const mesh = basketMesh(basket);
const lifted = (centreLift: number): Plan => ({ ...plan, base: { ...matOf(plan), centreLift } });

/** A studio whose settling the test itself answers. */
function opened() {
  const asked: { plan: Plan; polish: boolean }[] = [];
  let hear: (result: SettleResult) => void = () => {};
  const store = studio(plan, (onResult) => {
    hear = onResult;
    return {
      settle: (asking, { polish }) => void asked.push({ plan: asking, polish }),
      dispose() {},
    };
  });
  const common = (of: Plan) => ({ plan: of, number: 1, asked: 0, polished: true });
  return {
    asked,
    now: store.getState,
    settled: (of: Plan) =>
      hear({
        kind: 'settled',
        ...common(of),
        basket: { ...basket, plan: of },
        mesh,
        milliseconds: 7,
      }),
    failed: (of: Plan) => hear({ kind: 'failed', ...common(of), reason: 'Error: no shape' }),
  };
}

test('the first plan is settled cold', () => {
  const { asked, now } = opened();
  expect(asked).toEqual([{ plan, polish: true }]);
  expect(now().state).toBe('settling');
});

test('a studio that waits settles nothing before a history is restored', () => {
  const asked: Plan[] = [];
  const start = () => ({ settle: (of: Plan) => void asked.push(of), dispose() {} });
  const store = studio(plan, start, { waits: true });
  expect(asked).toEqual([]);
  const history = undone(changed(newHistory(lifted(8), 'x'), lifted(9), 'lift', undefined, 0));
  store.getState().restore(history);
  expect(asked).toEqual([lifted(8)]);
  expect(store.getState().plan).toEqual(lifted(8));
  store.getState().redo();
  expect(store.getState().plan).toEqual(lifted(9));
});

test('a change is settled warm, and the present basket stays until the next one is there', () => {
  const { asked, now, settled } = opened();
  settled(plan);
  now().change(lifted(9), 'centre lift');
  expect(asked.at(-1)).toEqual({ plan: lifted(9), polish: false });
  expect(now().state).toBe('settling');
  expect(now().mesh).toBe(mesh);
  settled(lifted(9));
  expect(now().state).toBe('settled');
});

test('a basket of a plan that is no longer present is shown, but nothing has settled yet', () => {
  const { now, settled } = opened();
  now().change(lifted(9), 'centre lift', 'drag');
  now().change(lifted(10), 'centre lift', 'drag');
  settled(lifted(9));
  expect(baseLift(now().basket?.plan.base ?? plan.base)).toBe(9);
  expect(now().state).toBe('settling');
});

test('another unit or name asks for no settling and is on the basket at once', () => {
  const { asked, now, settled } = opened();
  settled(plan);
  now().change({ ...plan, display: { unit: 'cm' } }, 'lengths in cm');
  expect(asked).toHaveLength(1);
  expect(now().state).toBe('settled');
  expect(now().basket?.plan.display.unit).toBe('cm');
});

test('undo and redo settle the plan they bring back', () => {
  const { asked, now } = opened();
  now().change(lifted(9), 'centre lift');
  now().undo();
  expect(now().plan).toBe(plan);
  expect(asked.at(-1)?.plan).toBe(plan);
  now().redo();
  expect(asked.at(-1)?.plan).toEqual(lifted(9));
});

test('opening another plan is settled cold and can be undone', () => {
  const { asked, now } = opened();
  now().open(lifted(9));
  expect(asked.at(-1)).toEqual({ plan: lifted(9), polish: true });
  now().undo();
  expect(now().plan).toBe(plan);
});

test('a settling that fails leaves the last basket and says so; the next good one takes it back', () => {
  const { now, settled, failed } = opened();
  settled(plan);
  const before = now().basket;
  now().change(lifted(9), 'centre lift');
  failed(lifted(9));
  expect(now().state).toBe('failed');
  expect(now().basket).toBe(before);
  expect(now().problem).toContain('no shape');
  now().undo();
  settled(plan);
  expect(now()).toMatchObject({ state: 'settled', problem: null });
});

test('a change to a plan that no one could save is not taken over and says why', () => {
  const { asked, now } = opened();
  now().change(lifted(5000), 'centre lift');
  expect(now().plan).toBe(plan);
  expect(now().problem).toContain('base.centreLift');
  expect(asked).toHaveLength(1);
  now().change(lifted(9), 'centre lift');
  expect(now().problem).toBeNull();
});

test('a good file is opened', () => {
  const { now } = opened();
  now().openText(writePlan(lifted(9)), 'class.girthline.json');
  expect(now().plan).toEqual(lifted(9));
  expect(now().problem).toBeNull();
});

test('a bad file leaves plan, history and basket as they are and says file, path, found and allowed', () => {
  const { asked, now, settled } = opened();
  settled(plan);
  const before = now();
  now().openText(writePlan(plan).replace('"mat"', '"star"'), 'class.girthline.json');
  expect(now().problem).toMatch(
    /class\.girthline\.json: base\.kind: found "star", allowed is "mat"/,
  );
  for (const key of ['plan', 'history', 'basket', 'mesh', 'state'] as const) {
    expect(now()[key]).toBe(before[key]);
  }
  expect(asked).toHaveLength(1);
});

test('a row beyond the last one is no longer pointed at', () => {
  const { now } = opened();
  now().pointAt(basket.summary.rows);
  const [band, ...more] = plan.bands;
  if (!band) throw new Error('the demo has bands');
  const rows = band.rows - 4;
  const points = plan.girthLine.points.map((point) => ({
    ...point,
    row: Math.ceil(point.row / 2),
  }));
  now().change(
    { ...plan, bands: [{ ...band, rows }, ...more], girthLine: { points, rows: {} } },
    'rows',
  );
  expect(now().problem).toBeNull();
  expect(now().row).toBeNull();
});
