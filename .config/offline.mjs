/** What makes the app one that is installed and works without a network. */
import { VitePWA } from 'vite-plugin-pwa';
import { language, pageWords } from './language.mjs';

/** @type {Parameters<typeof VitePWA>[0]['manifest']['icons']} */
const icons = [
  { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
  { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
  { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
];

/**
 * The manifest and the service worker, made by workbox. Everything that is built is kept in the
 * browser, parts that load later too. A newer worker waits until the person says so
 * (`src/keep/appUpdate.ts`). All addresses are relative, so that any folder of a server will do.
 */
export function offline() {
  return VitePWA({
    registerType: 'prompt',
    injectRegister: false,
    includeManifestIcons: false,
    manifest: {
      lang: language,
      name: pageWords.title,
      short_name: pageWords.name,
      description: pageWords.description,
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: '#f7f1e6',
      theme_color: '#f7f1e6',
      categories: ['productivity', 'utilities'],
      icons,
      shortcuts: [{ name: pageWords.atTheBench, url: './#bench' }],
    },
    workbox: {
      globPatterns: ['**/*'],
      globIgnores: ['sw.js'],
      maximumFileSizeToCacheInBytes: 8_000_000,
      // the page is the same whatever is asked of it; a file that is not there stays not there
      ignoreURLParametersMatching: [/./],
      navigateFallback: null,
      cleanupOutdatedCaches: true,
      // the first visit can lose its connection too
      clientsClaim: true,
      inlineWorkboxRuntime: true,
      sourcemap: false,
    },
  });
}
