import type { ReactNode } from 'react';

interface Props {
  readonly name: string;
  readonly title: string;
  /** True where the room lies behind a tab. */
  readonly isTab: boolean;
  readonly hidden: boolean;
  /** True where nothing inside takes the keyboard: the room itself does, so that it can be scrolled. */
  readonly takesKeyboard?: boolean;
  readonly children: ReactNode;
}

/** One part of the bench: a section of its own, or the panel of a tab. */
export function Room({ name, title, isTab, hidden, takesKeyboard = false, children }: Props) {
  const role = isTab
    ? { role: 'tabpanel', 'aria-labelledby': `tab-${name}` }
    : { 'aria-label': title };
  return (
    <section
      id={`room-${name}`}
      className={`${name}-room`}
      hidden={hidden}
      tabIndex={takesKeyboard ? 0 : -1}
      {...role}
    >
      {children}
    </section>
  );
}
