/** What the tabs of this browser tell one another of the shelf. */

export interface Saved {
  readonly tab: string;
  /** The plan that was changed or deleted. */
  readonly id: string;
}

export interface TabTalk {
  tell(saved: Saved): void;
  close(): void;
}

/** Hears what other tabs have saved. A browser without channels finds out when it saves itself. */
export function tabTalk(onSaved: (saved: Saved) => void): TabTalk {
  if (typeof BroadcastChannel === 'undefined') return { tell() {}, close() {} };
  const channel = new BroadcastChannel('girthline.shelf');
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    const saved = data as Partial<Saved> | null;
    if (typeof saved?.tab === 'string' && typeof saved.id === 'string') {
      onSaved({ tab: saved.tab, id: saved.id });
    }
  };
  return {
    tell: (saved) => channel.postMessage(saved),
    close: () => channel.close(),
  };
}
