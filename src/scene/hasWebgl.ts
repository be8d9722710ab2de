/** Whether this browser can draw in three dimensions: tried once with a canvas that is let go again. */
export function hasWebgl(): boolean {
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    if (context === null) return false;
    context.getExtension('WEBGL_lose_context')?.loseContext();
    return true;
  } catch {
    return false;
  }
}
