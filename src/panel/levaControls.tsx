/**
 * The one place that knows leva's own types. leva carries each control through its store as the
 * value of a plugin of ours, and lays the controls out; the plan stays the only truth, so nothing
 * is read back from leva's store. The value that leva hands to a plugin is typed `unknown` or `any`
 * in places: the casts for it stand here and nowhere else.
 */
import { useControls, useCreateStore } from 'leva';
import { createPlugin, useInputContext } from 'leva/plugin';
import { useEffect } from 'react';
import { ControlBody } from './ControlBody.tsx';
import type { Control, Controls } from './control.ts';

export type LevaStore = ReturnType<typeof useCreateStore>;

/** leva takes `label`, `hint` and the like out of an input; inside `control` they are ours. */
interface Carrier {
  readonly control: Control;
}

const carrier = createPlugin<Carrier, Control, object>({
  component: CarriedControl,
  normalize: ({ control }) => ({ value: control }),
});

/** A store of leva's that holds `controls` and follows them. */
export function useLevaControls(controls: Controls): LevaStore {
  const store = useCreateStore();
  const keys = Object.keys(controls);
  const [, set] = useControls(
    () => Object.fromEntries(keys.map((key, order) => [key, carried(controls, key, order)])),
    { store },
    [keys.join()],
  );
  useEffect(() => set(controls), [controls, set]);
  return store;
}

function carried(controls: Controls, key: string, order: number) {
  const control = controls[key];
  if (!control) throw new RangeError(`no control "${key}"`);
  return carrier({ control, order });
}

function CarriedControl() {
  const { value } = useInputContext() as { readonly value: Control };
  return (
    <div className="panel-control">
      <ControlBody control={value} />
    </div>
  );
}
