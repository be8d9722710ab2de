/** Strands in the plan panel: the weaver of a band, and the stake or the spoke of a base. */
export const strandWords = {
  ownSize: 'a size of my own',
  /** A size as sold, by its name. */
  roundSize: (name: string, across: string) => `${name}, ${across} mm`,
  /** The figure first: of a long name the end may find no room. */
  caneSize: (name: string, across: string) => `${across} mm, ${name}`,
  flatSize: (name: string, width: string, thickness: string) =>
    `${name}, ${width} × ${thickness} mm`,
  labels: {
    weaver: {
      section: 'Weaver section',
      size: 'Weaver size',
      across: 'Weaver across',
      width: 'Weaver width',
      thickness: 'Weaver thickness',
    },
    stake: {
      section: 'Stake section',
      size: 'Stake size',
      across: 'Stake across',
      width: 'Stake width',
      thickness: 'Stake thickness',
    },
    spoke: {
      section: 'Spoke section',
      size: 'Spoke size',
      across: 'Spoke across',
      width: 'Spoke width',
      thickness: 'Spoke thickness',
    },
  },
  /** What can be undone; that of a weaver names its band (`bandWords`). */
  acts: {
    stake: {
      section: 'the stake section',
      size: 'the stake size',
      width: 'the stake width',
      thickness: 'the stake thickness',
    },
    spoke: {
      section: 'the spoke section',
      size: 'the spoke size',
      width: 'the spoke width',
      thickness: 'the spoke thickness',
    },
  },
};
