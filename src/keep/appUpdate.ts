/**
 * The service worker's side of the page: it keeps the app for use without a network, and a newer one
 * waits until the person takes it. Nothing here loads the page anew without being asked.
 */
import type { Workbox } from 'workbox-window';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { here as studioHere } from './useStudio.ts';

/** `ready`: a newer app waits. `elsewhere`: another window of it has taken the newer app. */
export type AppUpdate = 'none' | 'ready' | 'elsewhere';

/** A page that stays open asks for a newer app when it is looked at again, at most this often, ms. */
const betweenLooks = 3_600_000;

const here = createStore<{ readonly update: AppUpdate }>(() => ({ update: 'none' }));
let workbox: Workbox | null = null;
let registration: ServiceWorkerRegistration | undefined;
let isTaking = false;

/** Whether there is a newer app than the one on the page. */
export function useAppUpdate(): AppUpdate {
  return useStore(here, ({ update }) => update);
}

/** Uses the newer app: the page is loaded anew, as soon as that is the one it will get. */
export function takeUpdate(): void {
  // another window may have taken it, or the browser let it go: then nothing would come of asking
  if (workbox && registration?.waiting) {
    isTaking = true;
    workbox.messageSkipWaiting();
  } else globalThis.location.reload();
}

/** Leaves the newer app for the next time the page is opened. */
export function leaveUpdate(): void {
  here.setState({ update: 'none' });
}

/**
 * Registers the service worker of the built app, once the first basket has settled: the basket comes
 * first. Without one (a browser or an address that allows none) everything works, as long as there is
 * a network.
 */
export function keepOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  const end = studioHere.subscribe(({ state }) => {
    if (state === 'settling') return;
    end();
    void register();
  });
}

async function register(): Promise<void> {
  const { serviceWorker } = navigator;
  let hadWorker = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (isTaking) globalThis.location.reload();
    // the very first worker brings nothing new
    else if (hadWorker) here.setState({ update: 'elsewhere' });
    hadWorker = true;
  });
  try {
    const { Workbox: Worker } = await import('workbox-window');
    const asked = new Worker('./sw.js', { scope: './' });
    asked.addEventListener('waiting', () => here.setState({ update: 'ready' }));
    registration = await asked.register();
    workbox = asked;
    lookAgain(asked);
  } catch {
    // refused, or no network on the first visit: the app runs without
  }
}

function lookAgain(asked: Workbox): void {
  let looked = performance.now();
  document.addEventListener('visibilitychange', () => {
    const now = performance.now();
    if (document.visibilityState !== 'visible' || now - looked < betweenLooks) return;
    looked = now;
    asked.update().catch(() => {});
  });
}
