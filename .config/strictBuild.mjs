/**
 * Where GIRTHLINE_STRICT is set, a build that warned of something fails at its end: everyone who starts
 * the app would read it.
 */

/** @returns {import('vite').Plugin} */
export function strictBuild() {
  /** @type {string[]} */
  const warnings = [];
  return {
    name: 'girthline:strict-build',
    apply: 'build',
    configResolved({ logger }) {
      const { warn } = logger;
      logger.warn = (message, options) => {
        warnings.push(message);
        warn(message, options);
      };
      logger.warnOnce = logger.warn;
    },
    closeBundle: {
      order: 'post',
      handler() {
        if (warnings.length > 0 && process.env.GIRTHLINE_STRICT)
          this.error(`the build warned of ${warnings.length} things; see above`);
      },
    },
  };
}
