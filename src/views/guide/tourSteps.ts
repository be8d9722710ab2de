import { tourWords } from '#words/tour.ts';

/** What the tour shows: a place on the page, and what to do there. */
export interface TourStep {
  /** Places that may stand for it, the first that is to be seen is taken. */
  readonly places: readonly string[];
  readonly title: string;
  readonly text: string;
}

export const tourSteps: readonly TourStep[] = [
  { places: ['.stage-room'], ...tourWords.basket },
  { places: ['.girth-room'], ...tourWords.girthLine },
  { places: ['[data-tour=compare]'], ...tourWords.compare },
  { places: ['.rows-room', '#tab-rows'], ...tourWords.rowChart },
  { places: ['[data-tour=help]'], ...tourWords.help },
];
