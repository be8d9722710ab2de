import type { tradeWords } from '#words/trade.ts';

/** A word of the trade that can be explained where it is used. */
export type TradeWord = keyof typeof tradeWords;
