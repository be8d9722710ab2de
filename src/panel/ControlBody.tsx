import { CountField } from '../form/CountField.tsx';
import { LengthField } from '../form/LengthField.tsx';
import { ChoiceField } from './ChoiceField.tsx';
import { ColourField } from './ColourField.tsx';
import type { Control } from './control.ts';
import { ShareField } from './ShareField.tsx';

/** The native input of a control. */
export function ControlBody({ control }: { readonly control: Control }) {
  switch (control.kind) {
    case 'length':
      return <LengthField {...control} />;
    case 'count':
      return <CountField {...control} />;
    case 'choice':
      return <ChoiceField {...control} />;
    case 'share':
      return <ShareField {...control} />;
    case 'colour':
      return <ColourField {...control} />;
  }
}
