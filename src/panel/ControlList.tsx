import { LevaPanel } from 'leva';
import { memo } from 'react';
import type { Controls } from './control.ts';
import { useLevaControls } from './levaControls.tsx';
import { levaTheme } from './levaTheme.ts';

/** Controls one below the other, laid out by leva. */
export const ControlList = memo(function ControlList({
  controls,
}: {
  readonly controls: Controls;
}) {
  const store = useLevaControls(controls);
  return <LevaPanel store={store} theme={levaTheme} fill flat titleBar={false} hideCopyButton />;
});
