/** Every array buffer inside a plain record of typed arrays, each once: what may be transferred. */
export function buffersOf(value: unknown): ArrayBuffer[] {
  const found = new Set<ArrayBuffer>();
  gather(value, found);
  return [...found];
}

function gather(value: unknown, found: Set<ArrayBuffer>): void {
  if (ArrayBuffer.isView(value)) {
    if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
  } else if (value !== null && typeof value === 'object') {
    for (const inner of Object.values(value)) gather(inner, found);
  }
}
