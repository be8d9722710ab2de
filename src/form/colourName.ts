import { colourWords } from '#words/colours.ts';

/** A colour as it is shown, by its name in the plan; one without a word of ours as it stands there. */
export function colourName(colour: string): string {
  return (Object.hasOwn(colourWords, colour) ? colourWords[colour] : undefined) ?? colour;
}
