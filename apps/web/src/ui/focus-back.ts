import { type RefObject, useLayoutEffect } from 'react';

/** What takes the focus gives it back when it goes: to where it came from, or to the heading of the part it stood in. */
export const useFocusBack = (element: RefObject<HTMLElement | null>): void =>
  useLayoutEffect(() => {
    const from = document.activeElement;
    const around = element.current?.closest<HTMLElement>('section, aside, main') ?? null;
    return () =>
      queueMicrotask(() => {
        if (document.activeElement !== document.body && document.activeElement !== null) return;
        const main = document.querySelector<HTMLElement>('main');
        const headingIn = (part: HTMLElement | null) => part?.querySelector<HTMLElement>('h1, h2');
        const heading = (around?.isConnected && headingIn(around)) || headingIn(main);
        const to = from instanceof HTMLElement && isOpenTo(from) ? from : heading;
        if (to === heading && heading?.hasAttribute('tabindex') === false) heading.tabIndex = -1;
        to?.focus();
      });
  }, [element]);

/** Still there; and no list of options, which would open over what has come instead. */
const isOpenTo = (from: HTMLElement): boolean =>
  from.isConnected && from !== document.body && from.getAttribute('role') !== 'combobox';
