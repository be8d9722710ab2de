import { tradeWords as explained } from '#words/trade.ts';

/** A word of the trade that can be explained where it is used. */
export type TradeWord = keyof typeof explained;

/** What each word of the trade means, by the word as it is written. */
export const tradeWords: Readonly<Record<string, string>> = Object.fromEntries(
  Object.values(explained).map(({ name, meaning }) => [name, meaning]),
);
