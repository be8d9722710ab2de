/**
 * fiber's canvas makes every class of three known to React, so that all of three has to be loaded. In the
 * built app it is not asked to: `src/scene/StageCanvas.tsx` names the few classes that our scenes are made
 * of, and the rest is left out.
 */
const all = 'React.useMemo(() => extend(THREE), []);';

/** @returns {import('vite').Plugin} */
export function threeParts() {
  let isFound = false;
  return {
    name: 'girthline:three-parts',
    apply: 'build',
    transform(code, id) {
      if (!/@react-three[\\/]fiber[\\/]dist/.test(id) || !code.includes(all)) return null;
      isFound = true;
      return { code: code.replace(all, ''), map: null };
    },
    buildEnd(error) {
      if (!error && !isFound)
        this.error(`fiber no longer has "${all}": see .config/threeParts.mjs`);
    },
  };
}
