/** What the woven strands weigh, and where that weight lies. (`!`: typed arrays in a hot loop.) */
import { bandOfRow } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { weaveFacts } from '../../plan/weaveFacts.ts';
import type { Net } from '../net/net.ts';
import { sectionArea } from '../strand/section.ts';

/** Grams in a cubic millimetre of dry reed: 0.52 g/cm³, from the trade's footage per pound. */
const reedDensity = 0.52e-3;

/**
 * Grams at each node: stakes with what is tucked (taken at the rim), weavers, and the two hoops of
 * the rim. Handle, filler and lashing are left out.
 */
export function nodeMass(plan: Plan, net: Net): Float64Array {
  const mass = new Float64Array(net.nodeCount);
  for (const { strand, nodes, rest, width } of net.stakes) {
    // Every section is in proportion to its width.
    const area = sectionArea(strand) / strand.width;
    for (let at = 0; at < rest.length; at++) {
      const wide = Math.min(width[at]!, width[at + 1]!);
      const half = (reedDensity * area * wide * rest[at]!) / 2;
      mass[nodes[at]!] = mass[nodes[at]!]! + half;
      mass[nodes[at + 1]!] = mass[nodes[at + 1]!]! + half;
    }
  }
  for (let row = 1; row < net.rows.length; row++) {
    const { weaver, weave } = bandOfRow(plan, row);
    addLoop(mass, net, row, weaveFacts[weave].strandsInRow * sectionArea(weaver));
  }
  const last = net.rows.length - 1;
  addLoop(mass, net, last, 2 * sectionArea(plan.rim.hoop));
  const above = net.rows[last]!.pitch / 2 + plan.allowances.tuck;
  for (const { width, nodes } of net.ends) {
    const area = sectionArea({ ...plan.base.stake, width });
    mass[nodes[last]!] = mass[nodes[last]!]! + reedDensity * area * above;
  }
  return mass;
}

/** Spreads a strand of `area` mm² round row `row`, by the planned spacing. */
function addLoop(mass: Float64Array, net: Net, row: number, area: number): void {
  const { nodes, spacing, girth } = net.rows[row]!;
  let sum = 0;
  for (let j = 0; j < nodes.length; j++) sum += spacing[j]!;
  const each = (reedDensity * area * girth) / sum / 2;
  for (let j = 0; j < nodes.length; j++) {
    const around = spacing[j]! + spacing[(j + nodes.length - 1) % nodes.length]!;
    mass[nodes[j]!] = mass[nodes[j]!]! + each * around;
  }
}

/** Centre of mass, x, y, z, of nodes at `positions`. */
export function centreOfMass(
  mass: Float64Array,
  positions: Float64Array,
): readonly [number, number, number] {
  let [x, y, z, sum] = [0, 0, 0, 0];
  for (let node = 0; node < mass.length; node++) {
    const m = mass[node]!;
    x += m * positions[3 * node]!;
    y += m * positions[3 * node + 1]!;
    z += m * positions[3 * node + 2]!;
    sum += m;
  }
  return [x / sum, y / sum, z / sum];
}
