/**
 * What is found about a basket. Lengths come already written, as the view's unit wants them or as
 * `{mm:12.3}`, which the view writes in the plan's unit.
 */
export const findingWords = {
  rocks: (hang: string, isRound: boolean, liftNow: string | undefined) =>
    `It stands on the inner part of its base and rocks: that hangs ${hang} below ${isRound ? 'its edge' : 'the corners'}. ` +
    `Push the middle of the base in further (${liftNow ? `more than the ${liftNow} it has now` : 'it has no lift now'}).`,
};
