import type { Component, ComponentType } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { Later, useLater } from './later.ts';
import { NotThereYet } from './NotThereYet.tsx';

interface Drawer {
  /** Its class, and its name for those who do not see it. */
  readonly kind: string;
  readonly name: string;
  /** What the button says that opens it. */
  readonly button: string;
  /** What comes, as the start of a sentence with a plural verb: `The players`. */
  readonly what: string;
}

/** A button by a desk, and what it opens below itself. The code of that is fetched only then. */
export function drawer<Props extends object>(
  { kind, name, button, what }: Drawer,
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  const later = new Later(load);
  return function DrawerView(this: Component<Props>, props: Props) {
    const isShown = useRef(false);
    // Closed, it looks the same whatever becomes of the desk. Set before the state, which puts its own around it.
    this.shouldComponentUpdate ??= () => isShown.current;
    const [isOpen, setOpen] = useState(false);
    isShown.current = isOpen;
    const code = useLater(later, 'when asked');
    const toggle = () => {
      setOpen(!isOpen);
      if (!isOpen) void code.fetch();
    };
    return (
      <section class={kind} aria-label={name}>
        <button type="button" aria-expanded={isOpen} onClick={toggle}>
          {button}
        </button>
        {isOpen && code.there && <code.there {...props} />}
        {isOpen && !code.there && <NotThereYet later={code} what={what} />}
      </section>
    );
  };
}
