import { Mishap } from './views/Mishap.tsx';
import { SafetyNet } from './views/SafetyNet.tsx';
import { Studio } from './views/Studio.tsx';

/** The app: the studio, and under it a net, so that a fault never leaves a blank page. */
export function App() {
  return (
    <SafetyNet under={(error) => <Mishap error={error} />}>
      <Studio />
    </SafetyNet>
  );
}
