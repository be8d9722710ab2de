/**
 * What the built page may load and run: what lies beside it, and nothing else. It stands in the page
 * itself, so that it holds wherever the page is served from; our own server sends it too.
 */

/**
 * leva's style sheet is an empty `<style>` whose rules are added by script. This is the hash of the
 * empty text: a `<style>` with anything in it is refused.
 */
const emptyStyle = "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='";

/** @type {Readonly<Record<string, string>>} */
const directives = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': `'self' ${emptyStyle}`,
  'img-src': "'self'",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

/** The policy as a page states it. */
export const policy = Object.entries(directives)
  .map(([name, sources]) => `${name} ${sources}`)
  .join('; ');

/** The headers a server can say more with: a page cannot forbid to be framed by itself. */
export const safeHeaders = {
  'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
};

/**
 * Writes the policy into the built page, before anything that it could refuse. The development server
 * runs scripts of its own inside the page, so it goes without.
 *
 * @returns {import('vite').Plugin}
 */
export function pagePolicy() {
  return {
    name: 'girthline:policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (html) => {
        const charset = '<meta charset="utf-8" />';
        if (!html.includes(charset)) throw new Error(`src/index.html must hold ${charset}`);
        const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;
        return html.replace(charset, `${charset}\n    ${meta}`);
      },
    },
  };
}
