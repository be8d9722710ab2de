/** Hot loops over typed arrays: `!` says that an index is inside. */
import { field, stride } from './crossings.ts';

/**
 * Where the wall leans more at one stake than at the next, a weaver that changes sides between them would pass
 * the wall's middle too high, and that of the next row too low: it bows back to where its row is.
 *
 * @param offs how far off the wall's middle each place of the weaver has been moved, mm
 * @param to the place after place `at`
 */
export function straighten(data: Float64Array, offs: Float64Array, at: number, to: number): void {
  const a = at * stride + field.tangent;
  const b = to * stride + field.tangent;
  const [tx, ty, tz] = [
    data[a]! + data[b]!,
    data[a + 1]! + data[b + 1]!,
    data[a + 2]! + data[b + 2]!,
  ];
  const [ax, ay, az] = [data[a + 3]!, data[a + 4]!, data[a + 5]!];
  const [bx, by, bz] = [data[b + 3]!, data[b + 4]!, data[b + 5]!];
  const [nx, ny, nz] = [ax + bx, ay + by, az + bz];
  // across the strand, as the gap is drawn
  const [x, y, z] = [ny * tz - nz * ty, nz * tx - nx * tz, nx * ty - ny * tx];
  const size = Math.sqrt(x * x + y * y + z * z) || 1;
  const own = offs[at]! * (ax * x + ay * y + az * z);
  const other = offs[to]! * (bx * x + by * y + bz * z);
  data[at * stride + field.bow]! -= (own + other) / (2 * size);
}
