/**
 * A script for the page that notes in `globalThis.frames` when each frame that draws began and how long
 * it took, ms. Unless `isDrawn`, the draw calls are put out of work: software drawing is no measure.
 */
export function noteFrames(isDrawn: boolean): string {
  return `
  globalThis.frames = [];
  let draws = 0;
  for (const name of ['drawElements', 'drawArrays']) {
    const draw = WebGL2RenderingContext.prototype[name];
    WebGL2RenderingContext.prototype[name] = function (...all) {
      draws += 1;
      ${isDrawn ? 'draw.apply(this, all);' : ''}
    };
  }
  const request = globalThis.requestAnimationFrame.bind(globalThis);
  globalThis.requestAnimationFrame = (callback) => request((time) => {
    const began = performance.now();
    draws = 0;
    callback(time);
    ${isDrawn ? 'document.querySelector("canvas")?.getContext("webgl2")?.finish();' : ''}
    if (draws > 0) globalThis.frames.push({ began, took: performance.now() - began });
  });
`;
}
