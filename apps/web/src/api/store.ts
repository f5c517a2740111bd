import { useSyncExternalStore } from 'react';

/** A value that the whole page shares: what stands outside of any component. */
export interface Store<T> {
  readonly get: () => T;
  readonly set: (next: T) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export const createStore = <T>(first: T): Store<T> => {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      if (Object.is(next, value)) return;
      value = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};

export const useStore = <T>(store: Store<T>): T => useSyncExternalStore(store.subscribe, store.get);
