import type { ReactNode } from 'react';
import { Component } from 'react';

interface Props {
  readonly children: ReactNode;
  /** What is shown in the children's place once one of them failed. */
  readonly under: (error: unknown) => ReactNode;
}

interface State {
  readonly caught: { readonly error: unknown } | null;
}

/** Catches what goes wrong while its children are drawn. */
export class SafetyNet extends Component<Props, State> {
  override state: State = { caught: null };

  static getDerivedStateFromError(error: unknown): State {
    return { caught: { error } };
  }

  override render(): ReactNode {
    const { caught } = this.state;
    return caught ? this.props.under(caught.error) : this.props.children;
  }
}
