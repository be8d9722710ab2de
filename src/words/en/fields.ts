/** Fields that a length or a number is typed into, and the explained words beside them. */
export const fieldWords = {
  /** `0 to 200 mm`: the least and the most that is taken. */
  range: (least: string, most: string) => `${least} to ${most}`,
  allowed: (label: string, range: string) => `${label}: ${range}`,
  /** What was typed lies outside the range; it may be empty. */
  refused: (label: string, range: string, found: string) =>
    `${label}: ${range}; found ${found || 'nothing'}`,
  /** What was typed is no length; `problem` is a sentence. */
  unread: (label: string, problem: string) => `${label}: ${problem}`,
  oneLess: (label: string) => `${label}: one less`,
  oneMore: (label: string) => `${label}: one more`,
  millimetres: (figure: string) => `${figure} mm`,
  whatIs: (word: string) => `What is “${word}”?`,
};
