/** Every row of the table of published patterns, in its order. */
import { berryBasket, biscuitBasket, dividedBasket, johns, napkinBasket } from './mats.ts';
import type { Pattern } from './pattern.ts';
import {
  halfInchMat,
  lengthRules,
  oblongTray,
  slackAndTension,
  slottedCount,
  stairBasket,
  stavesOnMould,
  withoutFigures,
} from './rules.ts';
import { countryClassic, fancyFeet, jardiniere, pencilBasket, snowLady } from './wheels.ts';

/** Sets up and settles all of them. */
export function publishedPatterns(): Pattern[] {
  return [
    countryClassic(),
    fancyFeet(),
    johns(),
    napkinBasket(),
    biscuitBasket(),
    lengthRules(),
    ...withoutFigures,
    snowLady(),
    berryBasket(),
    dividedBasket(),
    halfInchMat(),
    stairBasket(),
    pencilBasket(),
    jardiniere(),
    oblongTray(),
    slottedCount(),
    stavesOnMould(),
    slackAndTension(),
  ].toSorted((one, other) => one.number - other.number);
}
