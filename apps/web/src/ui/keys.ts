import { useEffect, useRef, useSyncExternalStore } from 'react';
import { useLayer } from './layer.js';

export interface Key {
  /** What it does, in words: shown in the list of keys. */
  readonly does: string;
  readonly act: () => void;
  /** Asked when it is pressed, if it depends on where the focus is. */
  readonly off?: boolean | (() => boolean);
}

interface Held {
  readonly layer: number;
  readonly keys: () => Readonly<Record<string, Key>>;
}

const held = new Set<Held>();

/**
 * Single keys of a page, while it is there and no dialog stands over it: `{ a: { does: 'Approve', act } }`, by the name of
 * the key as the browser gives it. They rest while somebody types, and the person may switch them all off; "Ctrl+Z" is no
 * single key and stays.
 */
export const useKeys = (keys: Readonly<Record<string, Key>>): void => {
  const layer = useLayer();
  const latest = useRef(keys);
  useEffect(() => {
    latest.current = keys;
  });
  useEffect(() => {
    const mine: Held = { layer, keys: () => latest.current };
    held.add(mine);
    return () => {
      held.delete(mine);
    };
  }, [layer]);
};

/** What is open now, for the list of keys, each once: that of the page, without the dialog that shows it. */
export const keysOfThePage = (): readonly (readonly [name: string, does: string])[] => [
  ...new Map(
    [...held]
      .filter(({ layer }) => layer === 0)
      .flatMap(({ keys }) => Object.entries(keys()).map(([name, { does }]) => [name, does] as const)),
  ),
];

/** Nothing of the page has the focus: it is on the page as a whole, as when one has just come to it. */
const isFocusOnPage = (): boolean =>
  document.activeElement === document.body || document.activeElement?.id === 'page';

/** The four arrows bring the focus from the page as a whole to where they go on; Enter opens there. */
export const arrowsInto = (does: string, opens: string, act: () => void): Readonly<Record<string, Key>> => {
  const off = () => !isFocusOnPage();
  const arrow: Key = { does, act, off };
  return {
    ArrowLeft: arrow,
    ArrowRight: arrow,
    ArrowUp: arrow,
    ArrowDown: arrow,
    Enter: { does: opens, act: () => undefined, off: () => true },
  };
};

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches('input:not([type=checkbox], [type=radio]), textarea, select'));

/** "a", "Enter", "Ctrl+Z"; undefined: no key of a page. */
const nameOf = ({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): string | undefined => {
  if (altKey) return undefined;
  if (!ctrlKey && !metaKey) return singleKeys.areOn() ? key : undefined;
  return shiftKey ? undefined : `Ctrl+${key.toUpperCase()}`;
};

const onKey = (event: KeyboardEvent): void => {
  const name = nameOf(event);
  if (event.defaultPrevented || name === undefined || isTyping(event.target)) return;
  const top = Math.max(
    0,
    ...[...held].map(({ layer }) => layer),
    document.querySelector('dialog[open]') ? 1 : 0,
  );
  for (const { layer, keys } of [...held].reverse()) {
    const key = layer === top ? keys()[name] : undefined;
    if (key === undefined || (typeof key.off === 'function' ? key.off() : key.off)) continue;
    event.preventDefault();
    key.act();
    return;
  }
};

/** One listener for the page. */
export const listenForKeys = (): (() => void) => {
  document.addEventListener('keydown', onKey);
  return () => document.removeEventListener('keydown', onKey);
};

/** The person's choice, kept on this machine. */
const createSwitch = () => {
  let who = '';
  let on = true;
  const listeners = new Set<() => void>();
  const tell = () => {
    for (const listener of listeners) listener();
  };
  return {
    areOn: () => on,
    of: (person: string) => {
      who = person;
      on = localStorage.getItem(`drumline.single-keys.${who}`) !== 'off';
      tell();
    },
    set: (next: boolean) => {
      on = next;
      localStorage.setItem(`drumline.single-keys.${who}`, next ? 'on' : 'off');
      tell();
    },
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};

export const singleKeys = createSwitch();

export const useSingleKeys = (): boolean => useSyncExternalStore(singleKeys.subscribe, singleKeys.areOn);
