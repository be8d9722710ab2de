/** Choosing how the sheet is laid out, so that no page stays nearly empty. */
import type { Flow, ShorterPage } from '../page/flow.ts';

/** What may be drawn larger or smaller, mm. */
export interface Room {
  /** Height of the girth line. */
  readonly figure: number;
  /** Least height of a row of the chart: there is writing to be done in it. */
  readonly rowHeight: number;
}

/** Writes what follows the first page. */
export type Content = (flow: Flow, room: Room) => void;

/** From roomy to tight. */
const rooms: readonly Room[] = [6.1, 5.6].flatMap((rowHeight) =>
  [92, 82, 72, 62].map((figure) => ({ figure, rowHeight })),
);
const tightest: Room = { figure: 62, rowHeight: 5.6 };

/** A last page filled less than this takes over some of the one before. */
const enough = 0.4;

/** Step by which a page is shortened, mm. */
const step = 8;

/**
 * `content` on new pages after `front`: on as few as will hold it and with tables as whole, as roomy as goes with that. Where
 * the last page would stay nearly empty, it and the one before share what they have.
 */
export function wellFilled(front: Flow, content: Content): Flow {
  const laid = (room: Room, shorter?: ShorterPage) => {
    const flow = front.after(shorter);
    content(flow, room);
    return { room, flow };
  };
  let first = laid(tightest);
  const fewest = first.flow.filled.length;
  const { splits } = first.flow;
  for (const room of rooms) {
    const roomy = laid(room);
    if (roomy.flow.filled.length > fewest || roomy.flow.splits > splits) continue;
    first = roomy;
    break;
  }
  let best = first.flow;
  const page = fewest - 2;
  const lower = (flow: Flow) => Math.min(flow.filled[page] ?? 0, flow.filled.at(-1) ?? 0);
  if (page < 1 || lower(best) >= enough) return best;
  for (let by = step; by < front.height / 2; by += step) {
    const { flow } = laid(first.room, { page, by });
    if (flow.filled.length > fewest || flow.splits > splits) continue;
    if (lower(flow) > lower(best)) best = flow;
  }
  return best;
}
