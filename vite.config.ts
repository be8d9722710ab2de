import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { conditions, wordsOfPage } from './.config/language.mjs';
import { noJsonSchema } from './.config/noJsonSchema.mjs';
import { noNode } from './.config/noNode.mjs';
import { offline } from './.config/offline.mjs';
import { pagePolicy, safeHeaders } from './.config/policy.mjs';
import { strictBuild } from './.config/strictBuild.mjs';
import { threeParts } from './.config/threeParts.mjs';

const project = import.meta.dirname;

/** Left to `npm run test:browser:long`. */
const longBrowserRuns = [
  'killed',
  'notKept',
  'accessibleStage',
  'accessibleThemes',
  'words',
  'wordsKept',
].map((name) => `tests/browser/${name}.test.ts`);

/**
 * The app's root is `src`, where its page lives. Vitest is given the project itself as root, so
 * that tests are named by their path from here.
 */
export default defineConfig({
  root: 'src',
  publicDir: '../public',
  base: './',
  plugins: [
    react(),
    threeParts(),
    noJsonSchema(),
    noNode(),
    wordsOfPage(),
    pagePolicy(),
    offline(),
    strictBuild(),
  ],
  worker: { format: 'es' },
  resolve: {
    conditions,
    alias: [
      { find: 'react-dropzone', replacement: `${project}/.config/noDropzone.mjs` },
      {
        find: /^(react-colorful|colord|colord\/plugins\/names)$/,
        replacement: `${project}/.config/noColourInput.mjs`,
      },
    ],
  },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        // what the page needs at once in one file: small files shared by views fetched later pack worse
        codeSplitting: {
          groups: [
            {
              name: 'base',
              test: /node_modules[\\/](zod|react|react-dom|scheduler|zustand|idb)[\\/]|src[\\/](plan|keep)[\\/](?!shelf[\\/](carryOver|keptAside|recover|shelfPlans)|benchTable|keepAsDraft|measureText)/,
            },
          ],
        },
      },
    },
    chunkSizeWarningLimit: 1600,
    // the page's policy allows no picture written out as an address
    assetsInlineLimit: 0,
  },
  preview: { headers: safeHeaders },
  test: {
    root: project,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          root: project,
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          // work is bounded by counts, not by the clock; a busy machine may be many times slower
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          root: project,
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          // the longest ones would take the whole run over its twelve minutes
          exclude: process.env.GIRTHLINE_LONG ? [] : longBrowserRuns,
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
