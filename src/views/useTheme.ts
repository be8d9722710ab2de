import { useEffect } from 'react';
import { useStudio } from '../keep/useStudio.ts';
import { useMedia } from './useMedia.ts';

/** Keeps the stage in the light or dark dress that the browser asks for. */
export function useTheme(): void {
  const isDark = useMedia('(prefers-color-scheme: dark)');
  const wear = useStudio(({ wear }) => wear);
  useEffect(() => wear(isDark ? 'dark' : 'light'), [isDark, wear]);
}
