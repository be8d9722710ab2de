/**
 * Colours of strand as they are shown, by the name that a plan has for them. A plan may have any
 * other name too, which is shown as it is.
 */
export const colourWords: Readonly<Record<string, string>> = {
  natural: 'natural',
  bleached: 'bleached',
  honey: 'honey',
  smoked: 'smoked',
  walnut: 'walnut',
  black: 'black',
  madder: 'madder',
  rust: 'rust',
  weld: 'weld',
  moss: 'moss',
  indigo: 'indigo',
  plum: 'plum',
  white: 'white',
  grey: 'grey',
  brown: 'brown',
  bark: 'bark',
  red: 'red',
  orange: 'orange',
  yellow: 'yellow',
  green: 'green',
  blue: 'blue',
  purple: 'purple',
};
