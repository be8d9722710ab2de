/** A name for a plan or a tab that no other has: 20 letters and figures. */
export function newId(): string {
  // crypto.randomUUID is missing where the page comes over plain http
  const bytes = crypto.getRandomValues(new Uint8Array(20));
  return Array.from(bytes, (byte) => (byte % 36).toString(36)).join('');
}
