/**
 * A smooth line through points that never overshoots: between two points it stays between their
 * heights, and a highest or lowest point is level.
 *
 * Piecewise cubic (Hermite) with the slopes of M. Steffen, "A simple method for monotonic
 * interpolation in one dimension", Astronomy & Astrophysics 239 (1990) 443–450, equation 11; they
 * keep every slope inside the region that F. N. Fritsch & R. E. Carlson, "Monotone piecewise cubic
 * interpolation", SIAM J. Numer. Anal. 17 (1980) 238–246, show to be enough: no slope steeper than
 * three times a neighbouring chord. At the two ends the second derivative is zero.
 */

/**
 * The line through `(xs[i], ys[i])` as a function. `xs` must rise from one to the next, and there
 * must be at least one point. Before the first point and after the last the value stays constant.
 */
export function monotoneCubic(xs: ArrayLike<number>, ys: ArrayLike<number>): (x: number) => number {
  const count = xs.length;
  if (count === 0 || ys.length !== count) {
    throw new RangeError(`${count} xs and ${ys.length} ys, allowed as many of both, at least 1`);
  }
  const chords = chordSlopes(xs, ys);
  const slopes = pointSlopes(xs, chords);

  return (x) => {
    if (!(x > at(xs, 0))) return at(ys, 0);
    if (x >= at(xs, count - 1)) return at(ys, count - 1);
    let low = 0;
    let high = count - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (at(xs, middle) <= x) low = middle;
      else high = middle;
    }
    const width = at(xs, high) - at(xs, low);
    const t = (x - at(xs, low)) / width;
    const s = 1 - t;
    const from = at(ys, low);
    const to = at(ys, high);
    const value =
      from * s * s * (1 + 2 * t) +
      to * t * t * (3 - 2 * t) +
      width * t * s * (at(slopes, low) * s - at(slopes, high) * t);
    // The cubic keeps between the two already; this only takes off the rounding.
    return Math.min(Math.max(value, Math.min(from, to)), Math.max(from, to));
  };
}

/** Slope at every point (Steffen's equation 11), from the slopes of the chords. */
function pointSlopes(xs: ArrayLike<number>, chords: Float64Array): Float64Array {
  const slopes = new Float64Array(xs.length);
  const last = xs.length - 1;
  for (let i = 1; i < last; i++) {
    const before = at(xs, i) - at(xs, i - 1);
    const after = at(xs, i + 1) - at(xs, i);
    const [left, right] = [at(chords, i - 1), at(chords, i)];
    const parabola = (left * after + right * before) / (before + after);
    const steepness = Math.min(Math.abs(left), Math.abs(right), Math.abs(parabola) / 2);
    slopes[i] = (Math.sign(left) + Math.sign(right)) * steepness;
  }
  if (last === 1) slopes.fill(at(chords, 0));
  if (last > 1) {
    slopes[0] = (3 * at(chords, 0) - at(slopes, 1)) / 2;
    slopes[last] = (3 * at(chords, last - 1) - at(slopes, last - 1)) / 2;
  }
  return slopes;
}

function chordSlopes(xs: ArrayLike<number>, ys: ArrayLike<number>): Float64Array {
  const chords = new Float64Array(Math.max(0, xs.length - 1));
  for (let i = 0; i < chords.length; i++) {
    const width = at(xs, i + 1) - at(xs, i);
    if (!(width > 0)) {
      throw new RangeError(`xs[${i + 1}] is ${xs[i + 1]}, allowed more than xs[${i}], ${xs[i]}`);
    }
    chords[i] = (at(ys, i + 1) - at(ys, i)) / width;
  }
  return chords;
}

/** Element `i`; every index in this file is inside its array. */
function at(values: ArrayLike<number>, i: number): number {
  return values[i] as number;
}
