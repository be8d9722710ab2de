/**
 * The shapes that were looked at last, kept in a database of their own, so that a page that is opened again
 * has its basket at once. They are what the worker made, and it makes them anew where they are missing:
 * nothing here is ever an error, and nothing is lost with them.
 */
import type { DBSchema, IDBPDatabase } from 'idb';
import { openDB } from 'idb';
import type { Plan } from '../plan/schema.ts';
import type { Settled } from '../work/question.ts';
import { shapeText } from './sameShape.ts';

/** What the worker made of a plan; the words of the plan are not kept with it. */
export interface KeptShape {
  readonly basket: Omit<Settled['basket'], 'plan'>;
  readonly mesh: Settled['mesh'];
  /** Time it took in the worker, ms. */
  readonly milliseconds: number;
}

export interface ShapeStore {
  /** The shape of `plan`, if it is kept and comes in time. */
  find(plan: Plan): Promise<KeptShape | null>;
  keep(plan: Plan, shape: KeptShape): Promise<void>;
  /** Lets go of all of them, and keeps none from now on. */
  clear(): Promise<void>;
}

interface ShapesSchema extends DBSchema {
  shapes: {
    key: string;
    value: KeptShape & { readonly key: string; readonly kept: number };
    indexes: { kept: number };
  };
}

/** So many shapes are kept, */
const most = 3;
/** none with more to draw than this, at some 50 bytes a vertex, */
const mostVertices = 250_000;
/** and one that has not come by then is not waited for, ms. */
const patience = 200;

/**
 * Opens the shapes made by the build `build`: a shape that another build made is never found, since it may
 * be another shape; null keeps none and finds none. The database is opened at once, so that it is there
 * when a plan is.
 */
export function shapeStore(build: string | null): ShapeStore {
  const opening = build === null ? null : open();
  let isEnded = false;
  const keyOf = (plan: Plan) => `${build}\n${shapeText(plan)}`;
  const inTime = async (plan: Plan) => {
    const found = await (await opening)?.get('shapes', keyOf(plan));
    return found ?? null;
  };
  return {
    async find(plan) {
      const late = new Promise<null>((resolve) => setTimeout(resolve, patience, null));
      return Promise.race([inTime(plan), late]).catch(() => null);
    },
    async keep(plan, shape) {
      const shapes = await opening;
      if (!shapes || isEnded || verticesOf(shape.mesh) > mostVertices) return;
      try {
        const change = shapes.transaction('shapes', 'readwrite');
        const { store } = change;
        const key = keyOf(plan);
        const put = store.put({ ...shape, key, kept: Date.now() });
        const drop = async () => {
          // whatever the clock says
          const others = (await store.index('kept').getAllKeys()).filter((one) => one !== key);
          await Promise.all(others.slice(0, 1 - most).map((one) => store.delete(one)));
        };
        await Promise.all([put, drop(), change.done]);
      } catch {
        // the disk is full, or a newer page has closed it
      }
    },
    async clear() {
      isEnded = true;
      await (await opening)?.clear('shapes').catch(() => {});
    },
  };
}

async function open(): Promise<IDBPDatabase<ShapesSchema> | null> {
  try {
    return await openDB<ShapesSchema>('girthline-shapes', 1, {
      upgrade(db) {
        db.createObjectStore('shapes', { keyPath: 'key' }).createIndex('kept', 'kept');
      },
      // a newer page may have it
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
  } catch {
    return null;
  }
}

function verticesOf({ stakes, weavers, fittings }: KeptShape['mesh']): number {
  const parts = [stakes, weavers, fittings];
  return parts.reduce((sum, { positions }) => sum + positions.length / 3, 0);
}
