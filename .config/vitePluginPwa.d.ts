/**
 * The part of vite-plugin-pwa that we use. Its own types bring a newer standard library with them
 * than the one our code may count on, so `tsconfig.json` names these instead.
 */
import type { PluginOption } from 'vite';

interface Picture {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly purpose?: 'maskable';
}

interface Options {
  readonly registerType: 'prompt' | 'autoUpdate';
  readonly injectRegister: false;
  readonly includeManifestIcons: boolean;
  readonly manifest: {
    readonly [member: string]: unknown;
    readonly icons: readonly Picture[];
  };
  /** As `generateSW` of workbox-build takes them. */
  readonly workbox: {
    readonly globPatterns: readonly string[];
    readonly globIgnores: readonly string[];
    /** Bytes. */
    readonly maximumFileSizeToCacheInBytes: number;
    readonly ignoreURLParametersMatching: readonly RegExp[];
    readonly navigateFallback: null;
    readonly cleanupOutdatedCaches: boolean;
    readonly clientsClaim: boolean;
    readonly inlineWorkboxRuntime: boolean;
    readonly sourcemap: boolean;
  };
}

export function VitePWA(options: Options): PluginOption;
