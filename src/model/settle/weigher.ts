import type { Fold } from './fold.ts';

/** Non-null assertions in this file stand on typed arrays within their bounds. */
export type Weigher = ReturnType<typeof weigher>;

/** Number of mirror images an element stands for, or 0 when another of its images stands for it. */
export function weigher({ images }: Fold, nodeCount: number) {
  const seen = new Float64Array(images.length + 1);
  /** Number of different keys among `seen`, or 0 when the first is not the least. */
  const orbit = (): number => {
    let different = 1;
    for (let i = 1; i < seen.length; i++) {
      if (seen[i]! < seen[0]!) return 0;
      let known = false;
      for (let k = 0; k < i; k++) known ||= seen[k] === seen[i];
      if (!known) different++;
    }
    return different;
  };
  return {
    pair(a: number, b: number): number {
      seen[0] = pairKey(nodeCount, a, b);
      for (let i = 0; i < images.length; i++)
        seen[i + 1] = pairKey(nodeCount, images[i]![a]!, images[i]![b]!);
      return orbit();
    },
    /** Of a bend at `b` between `a` and `c`. */
    triple(a: number, b: number, c: number): number {
      const square = nodeCount * nodeCount;
      seen[0] = b * square + pairKey(nodeCount, a, c);
      for (let i = 0; i < images.length; i++) {
        const image = images[i]!;
        seen[i + 1] = image[b]! * square + pairKey(nodeCount, image[a]!, image[c]!);
      }
      return orbit();
    },
  };
}

/** One number for a pair of nodes, whichever comes first. */
export function pairKey(nodeCount: number, a: number, b: number): number {
  return a < b ? a * nodeCount + b : b * nodeCount + a;
}
