/**
 * The settled shape has no weight and may lie anyhow. Here it is set on the table: base upright and
 * centred on the z axis, its length along x, then tilted (a little) on to the facet of its lower hull
 * under the centre of mass. z = 0 is the outer face of the lowest strands.
 */
import type { Plan } from '../../plan/schema.ts';
import type { Net } from '../net/net.ts';
import { baseNormal } from '../settle/frames.ts';
import { centreOfMass } from './mass.ts';
import { restPlane, supporting } from './restPlane.ts';
import { underside } from './underside.ts';

/** Tilt below which the basket is taken to rest, radians. */
const still = 1e-9;

/**
 * Positions of a standing basket, x, y, z of each node.
 *
 * @param shape settled positions
 * @param mass grams at each node (`nodeMass`)
 */
export function stand(plan: Plan, net: Net, shape: Float64Array, mass: Float64Array): Float64Array {
  const positions = upright(net, shape);
  const lower = Float64Array.from(positions);
  for (let turn = 0; turn < 6; turn++) {
    lowerFace(plan, net, positions, lower);
    const [gx, gy] = centreOfMass(mass, positions);
    const [a, b] = restPlane(lower, gx, gy);
    // Of several tables to rest on, a mirrored basket takes the level one in the middle of them.
    const slopeX = net.mirror.x ? 0 : a;
    const slopeY = net.mirror.y ? 0 : b;
    if (Math.hypot(slopeX, slopeY) < still) break;
    tilt(positions, slopeX, slopeY);
    centre(net, positions, 0);
  }
  lowerFace(plan, net, positions, lower);
  centre(net, positions, supporting(lower, 0, 0)[2]);
  return positions;
}

/** Every node moved straight down on to the lower face. */
function lowerFace(plan: Plan, net: Net, positions: Float64Array, into: Float64Array): void {
  into.set(positions);
  const under = underside(plan, net, positions);
  for (let node = 0; node < under.length; node++) into[3 * node + 2] = under[node]!;
}

/** Turns the shape so that its base's normal is up and its base's length lies along x. */
function upright(net: Net, shape: Float64Array): Float64Array {
  const up = new Float64Array(3);
  baseNormal(net, shape, up);
  const [ux, uy, uz] = up as unknown as [number, number, number];
  const [p, q, r, s] = net.frame.map((node) => 3 * node) as [number, number, number, number];
  const run = [0, 1, 2].map((d) => shape[q + d]! - shape[p + d]! + shape[r + d]! - shape[s + d]!);
  const [rx, ry, rz] = run as [number, number, number];
  const along = rx * ux + ry * uy + rz * uz;
  const [fx, fy, fz] = [rx - along * ux, ry - along * uy, rz - along * uz];
  const length = Math.hypot(fx, fy, fz);
  const [xx, xy, xz] = [fx / length, fy / length, fz / length];
  const [yx, yy, yz] = [uy * xz - uz * xy, uz * xx - ux * xz, ux * xy - uy * xx];
  const turned = new Float64Array(shape.length);
  for (let i = 0; i < shape.length; i += 3) {
    const [x, y, z] = [shape[i]!, shape[i + 1]!, shape[i + 2]!];
    turned[i] = xx * x + xy * y + xz * z;
    turned[i + 1] = yx * x + yy * y + yz * z;
    turned[i + 2] = ux * x + uy * y + uz * z;
  }
  return turned;
}

/** The least turn that brings the plane z = a·x + b·y level. */
function tilt(positions: Float64Array, a: number, b: number): void {
  const size = Math.sqrt(a * a + b * b + 1);
  const [nx, ny, nz] = [-a / size, -b / size, 1 / size];
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, z] = [positions[i]!, positions[i + 1]!, positions[i + 2]!];
    const flat = (nx * x + ny * y) / (1 + nz) + z;
    positions[i] = x - nx * flat;
    positions[i + 1] = y - ny * flat;
    positions[i + 2] = nx * x + ny * y + nz * z;
  }
}

/** Moves the middle of the base on to the z axis, and everything down by `height`. */
function centre(net: Net, positions: Float64Array, height: number): void {
  let [x, y] = [0, 0];
  for (const node of net.frame) {
    x += positions[3 * node]! / 4;
    y += positions[3 * node + 1]! / 4;
  }
  for (let i = 0; i < positions.length; i += 3) {
    positions[i] = positions[i]! - x;
    positions[i + 1] = positions[i + 1]! - y;
    positions[i + 2] = positions[i + 2]! - height;
  }
}
