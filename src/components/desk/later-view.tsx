import { type ComponentType, hydrate, render } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { madeWhenChanged } from './drawn-when-changed.ts';
import { Later, useLater } from './later.ts';
import { NotThereYet } from './NotThereYet.tsx';

/** Where a policy of trusted types holds, the empty markup that it lets pass. */
const { trustedTypes } = globalThis as { trustedTypes?: { readonly emptyHTML: string } };

/**
 * Makes Preact leave the markup of the server as it stands; while it hydrates it writes none itself. Where
 * nothing was rendered by the server, it writes what is empty.
 */
const AS_RENDERED = { __html: trustedTypes?.emptyHTML ?? '' };

/**
 * A component whose code comes after the page stands. What the server rendered stays, and comes to life
 * when the code is there; if a property has changed before, it gives way to a word that it comes. It
 * has to stand in the page from the first rendering on.
 *
 * @param what what it shows, as the start of a sentence with a plural verb: `The ways`. Where nobody would miss it,
 *   nothing: then no word is said while it is not there, and it is tried again with every change.
 * @param Meanwhile what it gives way to in place of that word, where the page has something that does for a while.
 */
export function laterView<Props extends object>(
  what: string | undefined,
  load: () => Promise<ComponentType<Props>>,
  Meanwhile?: ComponentType<Props>,
): ComponentType<Props> {
  const code = new Later(load);
  return madeWhenChanged(function LaterView(props: Props) {
    // The server shows it at once: its renderer waits for what is thrown, and begins again.
    if (import.meta.env.SSR && !code.there) throw code.fetch();
    const later = useLater(code);
    const tried = useRef(props);
    useEffect(() => {
      if (what !== undefined || !later.hasFailed || tried.current === props) return;
      tried.current = props;
      void later.fetch();
    });
    const place = useRef<HTMLDivElement>(null);
    const first = useRef(props);
    /** What its view was shown with last; nothing as long as it did not come to life. */
    const shown = useRef<{ readonly View: ComponentType<Props>; readonly props: Props }>();
    /** What was clicked before it came to life, in a button that was there from the server. */
    const clicked = useRef<HTMLElement>();
    const isAsRendered = useRef(true);
    isAsRendered.current &&= areAlike(first.current, props);
    const View = later.there ?? (isAsRendered.current ? undefined : Meanwhile);
    // In its place the view is a root of its own.
    useLayoutEffect(() => {
      if (!place.current) return;
      // Where nobody would miss it, what the server rendered stays until there is something better.
      const isCleared = View !== undefined || what !== undefined;
      const last = shown.current;
      if (!last && !isAsRendered.current && isCleared) place.current.replaceChildren();
      if (!View || (last?.View === View && areAlike(last.props, props))) return;
      const show = last ? render : hydrate;
      show(<View {...props} />, place.current);
      shown.current = { View, props };
      clicked.current?.click();
      clicked.current = undefined;
    });
    useEffect(() => {
      const element = place.current;
      return () => {
        if (element) render(null, element);
      };
    }, []);

    if (import.meta.env.SSR) return <div>{View && <View {...props} />}</div>;
    return (
      <>
        <div
          ref={place}
          dangerouslySetInnerHTML={AS_RENDERED}
          onClickCapture={({ target }) => {
            const isInButton = (target as Element).closest('button');
            if (isInButton && !shown.current) clicked.current = target as HTMLElement;
          }}
        />
        {what !== undefined &&
          !later.there &&
          (later.hasFailed || !(View || isAsRendered.current)) && (
            <NotThereYet later={later} what={what} />
          )}
      </>
    );
  });
}

const areAlike = (one: object, other: object): boolean =>
  Object.entries(one).every(([name, value]) => Reflect.get(other, name) === value);
