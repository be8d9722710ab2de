/** The settled net, stood on the table and measured. */
import type { Plan } from '../../plan/schema.ts';
import type { Measured, Settling } from '../basket.ts';
import type { Net } from '../net/net.ts';
import { cutList } from './cutList.ts';
import { nodeMass } from './mass.ts';
import { rowCurves } from './rowCurve.ts';
import { rowReadings } from './rows.ts';
import { stakeReadings } from './stakes.ts';
import { stand } from './stand.ts';
import { summary } from './summary.ts';

/** Reads everything off a settled net; `shape` holds x, y, z of each node, mm, however it lies. */
export function readBasket(
  plan: Plan,
  net: Net,
  shape: Float64Array,
  settling: Settling,
): Measured {
  const mass = nodeMass(plan, net);
  const positions = stand(plan, net, shape, mass);
  const curves = rowCurves(net, positions);
  const rows = rowReadings(plan, net, positions, curves);
  const stakes = stakeReadings(plan, net, positions);
  return {
    plan,
    net,
    positions,
    settling,
    summary: summary({ plan, net, positions, mass, curves, rows, stakes, settling }),
    rows,
    stakes,
    cutList: cutList(plan, net),
  };
}
