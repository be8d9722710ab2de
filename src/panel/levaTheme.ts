/** leva in the colours and measures of the page. */
export const levaTheme = {
  colors: {
    elevation1: 'transparent',
    elevation2: 'transparent',
    elevation3: 'var(--line)',
    accent1: 'var(--accent)',
    accent2: 'var(--accent)',
    accent3: 'var(--accent)',
    highlight1: 'var(--ink-soft)',
    highlight2: 'var(--ink)',
    highlight3: 'var(--ink)',
    vivid1: 'var(--warn)',
  },
  radii: { xs: '3px', sm: '5px', lg: '0px' },
  space: { xs: '0px', sm: '0px', md: '0px', rowGap: '8px', colGap: '8px' },
  fonts: { mono: 'var(--sans)', sans: 'var(--sans)' },
  fontSizes: { root: '13px' },
  sizes: { rootWidth: '100%', controlWidth: '150px', rowHeight: '32px' },
  shadows: { level1: 'none', level2: 'none' },
  borderWidths: {
    root: '0px',
    input: '1px',
    focus: '2px',
    hover: '1px',
    active: '1px',
    folder: '0px',
  },
} as const;
